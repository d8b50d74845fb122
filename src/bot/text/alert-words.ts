/** What is said of the alerts of a weather service. The name of an alert is the service's own. */
export interface AlertWords {
  /** `service` names whose it is; what is to be done is the service's to say. */
  line(event: string, when: string, service: string): string
  until(at: string): string
  readonly services: Readonly<Record<string, string>>
  readonly notKnown: string
  notKnownSince(at: string): string
  /** What the watch is about when a new one is out. */
  readonly head: string
  over(event: string): string
}
