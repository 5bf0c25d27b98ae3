import {paletteQuery, palettes, storageKey} from '../browser-contract/page-contract.ts'

/** Sets the palette before the first paint: from the address, else from memory, else the PC decides. Runs in the head, before any body exists. */
function setPalette(): void {
  const match = new RegExp(`[?&]${paletteQuery}=([a-z]+)`).exec(location.search)
  const asked = match?.[1] ?? remembered()
  const palette = palettes.find((one) => one === asked)
  if (palette) document.documentElement.setAttribute('data-palette', palette)
}

function remembered(): string | null {
  try {
    return localStorage.getItem(storageKey('any', 'palette'))
  } catch {
    return null
  }
}

setPalette()
