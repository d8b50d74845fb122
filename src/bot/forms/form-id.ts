/** Ids of the forms: callback ids too. */
export const formIds = ['checklist', 'readings', 'coupon', 'void', 'seal', 'detail', 'punch'] as const
export type FormId = (typeof formIds)[number]
