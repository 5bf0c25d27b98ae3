/**
 * Says beside each urgent revision whose last day is over by the clock of the computer that the office is asked.
 *
 * It is a hint: the clock may be wrong, and nothing is hidden.
 */
export function startUrgentDays(now: Date = new Date()): void {
  const today = dayOf(now)
  for (const urgent of Array.from(document.querySelectorAll('[data-valid-to]'))) {
    if (today <= (urgent.getAttribute('data-valid-to') ?? '')) continue
    const over = urgent.querySelector('.urgent-over')
    const day = over?.querySelector('.urgent-today')
    if (!over || !day) continue
    day.textContent = today
    over.removeAttribute('hidden')
  }
}

/** The day on the wall of the ship's office: local time, as the last day is meant. */
function dayOf(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0')
  return [String(now.getFullYear()).padStart(4, '0'), two(now.getMonth() + 1), two(now.getDate())].join('-')
}
