import {type Palette, paletteQuery, palettes, storageKey} from '../browser-contract/page-contract.ts'

/** Makes the palette buttons work and lets the palette travel in every link of the folder. */
export function startPalettes(): void {
  const current = palettes.find((one) => one === document.documentElement.getAttribute('data-palette'))
  for (const button of buttons()) {
    button.addEventListener('click', () => {
      const chosen = palettes.find((one) => one === button.getAttribute('data-palette-choice'))
      if (chosen) choose(chosen)
    })
  }
  if (current) show(current)
}

function buttons(): readonly Element[] {
  return Array.from(document.querySelectorAll('[data-palette-choice]'))
}

function choose(palette: Palette): void {
  document.documentElement.setAttribute('data-palette', palette)
  try {
    localStorage.setItem(storageKey('any', 'palette'), palette)
  } catch {
    // Storage is blocked: the address carries the palette all the same.
  }
  try {
    history.replaceState(null, '', withPalette(location.hash, palette))
  } catch {
    // The address keeps its old palette; the links carry the new one.
  }
  show(palette)
}

function show(palette: Palette): void {
  for (const button of buttons())
    button.setAttribute('aria-pressed', String(button.getAttribute('data-palette-choice') === palette))
  for (const link of Array.from(document.querySelectorAll('a[href]'))) {
    const address = link.getAttribute('href') ?? ''
    if (!address.startsWith('#') && !/^[a-z]+:/i.test(address))
      link.setAttribute('href', withPalette(address, palette))
  }
  for (const frame of Array.from(document.querySelectorAll('iframe.issue'))) showFrame(frame, palette)
}

/** Loads the issue line anew in the palette, out of sight until it has it: a white frame at night blinds. */
function showFrame(frame: Element, palette: Palette): void {
  if (!(frame instanceof HTMLIFrameElement)) return
  frame.style.visibility = 'hidden'
  frame.addEventListener('load', () => frame.style.removeProperty('visibility'), {once: true})
  frame.setAttribute('src', withPalette(frame.getAttribute('src') ?? '', palette))
}

function withPalette(address: string, palette: Palette): string {
  const [path = '', fragment] = address.split('#')
  const [file = ''] = path.split('?')
  return `${file}?${paletteQuery}=${palette}${fragment === undefined ? '' : `#${fragment}`}`
}
