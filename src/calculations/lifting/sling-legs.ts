/** Which legs of a sling with three or four legs are taken to carry: two of them, or all as far as the standard counts them. */
export type SlingShare = 'two-legs' | 'all-legs'

/**
 * How many legs of a sling count as carrying.
 *
 * A rigid load on three or four legs of nearly the same length hangs on two of them; the others only hold it level. Where
 * all legs are taken to carry, the fourth one still does not count.
 *
 * Source: common practice, no source (two of a rigid load); EN 818-4 (four count as three), read in a reprint.
 * Valid for: slings with one to four legs.
 *
 * @throws {RangeError}
 *   When the sling has another count of legs.
 */
export function countedLegs(legs: number, share: SlingShare): number {
  if (!Number.isInteger(legs) || legs < 1 || legs > 4)
    throw new RangeError(`Unexpected sling with ${legs} legs, expected 1, 2, 3 or 4`)
  return Math.min(legs, share === 'two-legs' ? 2 : 3)
}
