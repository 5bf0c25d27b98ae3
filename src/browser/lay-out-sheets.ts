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
  const append = (units: readonly Node[]): void => {
    table.append(...units)
    if (!overflows(body) || table.tBodies.length === units.length) return
    for (const unit of units) table.removeChild(unit)
    startSheet()
    table.append(...units)
  }
  for (const units of wholeSteps(task)) {
    if (units.length === 1 || fitsOneSheet(units, holder)) append(units)
    else for (const unit of units) append([unit])
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

/** Copies of the units, those of one step together: a step goes over to a further sheet only when it outgrows one. */
function wholeSteps(task: HTMLTableElement): readonly (readonly Node[])[] {
  const groups: Node[][] = []
  for (const unit of Array.from(task.tBodies)) {
    const group = groups[groups.length - 1]
    if (group && unit.querySelector('.step-again')) group.push(unit.cloneNode(true))
    else groups.push([unit.cloneNode(true)])
  }
  return groups
}

/** Tries units on a sheet of their own, which is taken away again. */
function fitsOneSheet(units: readonly Node[], holder: HTMLElement): boolean {
  const body = newSheet(holder, [])
  newTable(body).append(...units)
  const fits = !overflows(body)
  for (const unit of units) unit.parentNode?.removeChild(unit)
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
  const tag = element('p', 'sheet-tag', document.querySelector('.identity .tag')?.textContent ?? '')
  const who = element('p', 'sheet-who')
  who.append(
    element('b', '', vessel),
    ` · serial ${fact('Serial number')}`,
    document.createElement('br'),
    element('b', '', title),
    document.createElement('br'),
    page,
  )
  const count = element('p', 'sheet-count')
  count.append(element('b', ''), document.createElement('br'), state)
  head.append(tag, who, count)
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
