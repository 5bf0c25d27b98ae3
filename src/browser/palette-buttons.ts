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
  show(palette)
  const frame = document.querySelector('iframe.issue')
  const source = frame?.getAttribute('src')
  if (frame && source) frame.setAttribute('src', withPalette(source, palette))
}

function show(palette: Palette): void {
  for (const button of buttons())
    button.setAttribute('aria-pressed', String(button.getAttribute('data-palette-choice') === palette))
  for (const link of Array.from(document.querySelectorAll('a[href]'))) {
    const address = link.getAttribute('href') ?? ''
    if (!address.startsWith('#') && !/^[a-z]+:/i.test(address))
      link.setAttribute('href', withPalette(address, palette))
  }
}

function withPalette(address: string, palette: Palette): string {
  const [path = '', fragment] = address.split('#')
  const [file = ''] = path.split('?')
  return `${file}?${paletteQuery}=${palette}${fragment === undefined ? '' : `#${fragment}`}`
}
