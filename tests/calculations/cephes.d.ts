/** What tests use of cephes: its package names its types where this module resolution does not look. */
declare module 'cephes' {
  /** Fulfilled as soon as the functions may be called. */
  export const compiled: Promise<void>
  /** Quantile of Student's t. */
  export function stdtri(degreesOfFreedom: number, probability: number): number
  /** Probability of at most so many events by Poisson. */
  export function pdtr(events: number, mean: number): number
}
