import {contractVersion} from '../browser-contract/page-contract.ts'
import {chartWordsEn} from '../figures/charts/chart-words-en.ts'
import {type DrawnChart, drawChart} from '../figures/charts/draw-chart.ts'
import type {Entries} from '../figures/charts/try-reading.ts'

/** Lets a reading be tried below each chart; a fault leaves the page as it reads without scripts. */
try {
  if (document.body.getAttribute('data-contract') === String(contractVersion))
    for (const section of Array.from(document.querySelectorAll('[data-chart]'))) offerForm(section)
} catch {
  for (const form of Array.from(document.querySelectorAll('.try-reading'))) form.remove()
}

/** Puts the form of a chart onto the page and makes its buttons work. Nothing is kept. */
function offerForm(section: Element): void {
  const kind = section.getAttribute('data-chart') ?? ''
  const data: unknown = JSON.parse(section.querySelector('[type="application/json"]')?.textContent ?? 'null')
  const place = section.querySelector('.chart-place')
  const statements = section.querySelector('.statements')
  const template = section.querySelector('template')
  if (!place || !statements || !template) return
  template.replaceWith(template.content.cloneNode(true))
  const form = section.querySelector('form')
  const refusal = form?.querySelector('.try-refusal')
  const away = form?.querySelector('[type=reset]')
  if (!form || !refusal || !away) return
  const wasEmpty = place.children.length === 0
  const show = (drawn: DrawnChart, isTried: boolean): void => {
    refusal.textContent = drawn.ok ? '' : drawn.refusal
    if (!drawn.ok) return
    place.innerHTML = isTried || !wasEmpty ? drawn.chart.svg : ''
    statements.replaceChildren(...drawn.chart.statements.map(itemOf))
    away.toggleAttribute('hidden', !isTried)
  }
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    show(drawChart(kind, data, entriesOf(form), chartWordsEn), true)
  })
  form.addEventListener('reset', () => show(drawChart(kind, data, undefined, chartWordsEn), false))
}

function itemOf(statement: string): HTMLLIElement {
  const item = document.createElement('li')
  item.textContent = statement
  return item
}

function entriesOf(form: HTMLFormElement): Entries {
  const entries = new Map<string, string>()
  for (const [name, value] of Array.from(new FormData(form).entries()))
    if (typeof value === 'string') entries.set(name, value)
  return entries
}
