/** Version of the rules and formulas: every decision carries it, so that a replay can say which version differs. */
export const engineVersion = '0.1.0'
