/** Ids of the forms: callback ids too. */
export const formIds = ['checklist', 'readings', 'kit', 'coupon', 'void', 'laid', 'seal', 'detail', 'punch', 'site', 'start'] as const
export type FormId = (typeof formIds)[number]
