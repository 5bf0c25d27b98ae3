/** Lays the task sheet out in explicit numbered sheets before printing, and takes them away afterwards. */
export function startSheets(): void {
  const task = document.querySelector('table.task')
  if (!(task instanceof HTMLTableElement)) return
  addEventListener('beforeprint', () => layOut(task))
  addEventListener('afterprint', clear)
}

function clear(): void {
  document.querySelector('.sheets')?.remove()
  document.documentElement.classList.remove('has-sheets')
}

function layOut(task: HTMLTableElement): void {
  clear()
  const paper = document.querySelector('link[data-paper]')
  paper?.setAttribute('media', 'all')
  const holder = element('div', 'sheets')
  document.body.append(holder)
  document.documentElement.classList.add('has-sheets')
  const sheets: HTMLElement[] = []
  let body = newSheet(holder, sheets)
  let table = newTable(body)
  const startSheet = (): void => {
    body = newSheet(holder, sheets)
    table = newTable(body)
  }
  const append = (unit: HTMLTableSectionElement): void => {
    table.append(unit)
    if (!overflows(body) || table.tBodies.length === 1) return
    table.removeChild(unit)
    startSheet()
    table.append(unit)
  }
  for (const unit of Array.from(task.tBodies)) {
    const whole = copyOf(unit)
    if (unit.rows.length === 1 || fitsOneSheet(whole, holder)) append(whole)
    else for (const row of Array.from(unit.rows)) append(copyOf(unit, row))
  }
  sheets.forEach((sheet, index) => {
    const count = sheet.querySelector('.sheet-count b')
    if (count) count.textContent = `Sheet ${index + 1} of ${sheets.length}`
    const inner = sheet.querySelector('.sheet-body')
    if (inner && overflows(inner)) sheet.setAttribute('data-overflow', '')
  })
  for (const copied of Array.from(holder.querySelectorAll('[id]'))) copied.removeAttribute('id')
  paper?.setAttribute('media', 'print')
}

/** Copy of a unit with all its rows, or with one: a step goes over to a further sheet only when it outgrows one. */
function copyOf(unit: HTMLTableSectionElement, row?: HTMLTableRowElement): HTMLTableSectionElement {
  const copy = document.createElement('tbody')
  copy.className = unit.className
  for (const one of row ? [row] : Array.from(unit.rows)) copy.append(one.cloneNode(true))
  return copy
}

/** Tries a unit on a sheet of its own, which is taken away again. */
function fitsOneSheet(unit: HTMLTableSectionElement, holder: HTMLElement): boolean {
  const body = newSheet(holder, [])
  newTable(body).append(unit)
  const fits = !overflows(body)
  body.closest('.sheet')?.remove()
  return fits
}

function overflows(body: Element): boolean {
  return body.scrollHeight > body.clientHeight + 1
}

function newTable(body: HTMLElement): HTMLTableElement {
  const table = document.createElement('table')
  table.className = 'task'
  body.append(table)
  return table
}

function newSheet(holder: HTMLElement, sheets: HTMLElement[]): HTMLElement {
  const sheet = element('section', 'sheet')
  const head = element('div', 'sheet-head')
  const spans = Array.from(document.querySelectorAll('.task .running span')).map(
    (one) => one.textContent ?? '',
  )
  const [vessel = '', title = '', page = '', state = ''] = spans
  const tag = element('p', 'sheet-tag', document.querySelector('.running-tag')?.textContent ?? '')
  const serial = fact('Serial number')
  const who = element('p', 'sheet-who')
  who.append(
    element('b', '', vessel),
    serial === '' ? '' : ` · serial ${serial}`,
    document.createElement('br'),
    element('b', '', title),
    document.createElement('br'),
    page,
  )
  const count = element('p', 'sheet-count')
  count.append(element('b', ''))
  // Each urgent revision on a line of its own, so that no date is broken.
  for (const part of state.split(/(?<=; )/)) count.append(document.createElement('br'), part)
  const plan = document.querySelector('.where .picture')?.cloneNode()
  head.append(tag, ...(plan ? [plan] : []), who, count)
  const body = element('div', 'sheet-body')
  const foot = element('div', 'sheet-foot')
  const stopped = element('p', '')
  stopped.append(
    'stopped at step ',
    element('span', 'sheet-blank'),
    ' time ',
    element('span', 'sheet-blank'),
    ' name ',
    element('span', 'sheet-blank'),
  )
  foot.append(stopped, element('p', '', footWords()))
  sheet.append(head, body, foot)
  holder.append(sheet)
  sheets.push(sheet)
  return body
}

function footWords(): string {
  const safety = document.querySelector('.foot p')?.textContent ?? ''
  const demonstration = document.querySelector('.demonstration')?.textContent ?? ''
  return demonstration === '' ? safety : `${demonstration}. ${safety}`
}

function fact(label: string): string {
  for (const term of Array.from(document.querySelectorAll('.who dt'))) {
    if (term.textContent === label) return term.nextElementSibling?.textContent ?? ''
  }
  return ''
}

function element(tag: string, name: string, text = ''): HTMLElement {
  const made = document.createElement(tag)
  if (name !== '') made.className = name
  made.textContent = text
  return made
}
