declare module 'parse-prometheus-text-format' {
  /** Families of the text format, as prom2json gives them. */
  export default function parse(text: string): unknown[]
}
