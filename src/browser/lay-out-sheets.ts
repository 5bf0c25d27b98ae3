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
  for (const unit of Array.from(task.tBodies)) {
    const copy = unit.cloneNode(true)
    table.append(copy)
    if (body.scrollHeight > body.clientHeight + 1 && table.tBodies.length > 1) {
      table.removeChild(copy)
      body = newSheet(holder, sheets)
      table = newTable(body)
      table.append(copy)
    }
  }
  sheets.forEach((sheet, index) => {
    const count = sheet.querySelector('.sheet-count b')
    if (count) count.textContent = `Sheet ${index + 1} of ${sheets.length}`
    const inner = sheet.querySelector('.sheet-body')
    if (inner && inner.scrollHeight > inner.clientHeight + 1) sheet.setAttribute('data-overflow', '')
  })
  for (const copied of Array.from(holder.querySelectorAll('[id]'))) copied.removeAttribute('id')
  paper?.setAttribute('media', 'print')
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
