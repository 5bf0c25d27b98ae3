import {readFileSync} from 'node:fs'
import {textWidth} from '../../src/figures/svg-text.ts'

const styles = readFileSync(new URL('../../templates/styles/3-parts.css', import.meta.url), 'utf8')

/** A box of a figure in units of its view box. */
export interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** Size of the view box. */
export function viewOf(svg: string): {readonly width: number; readonly height: number} {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/u.exec(svg) ?? []
  return {width: Number(width), height: Number(height)}
}

/** Size of a letter of a class as the stylesheet gives it, in units of the view box. */
export function letterSize(name: string): number {
  const sizes = [...styles.matchAll(/([^{}]+)\{([^{}]*)\}/gu)].flatMap(([, selectors = '', body = '']) => {
    const size = /font-size:([\d.]+)px/u.exec(body)?.[1]
    return size !== undefined && selectors.split(',').some((one) => one.trim() === `.${name}`)
      ? [Number(size)]
      : []
  })
  return sizes.at(-1) ?? Number.NaN
}

/** Every text with the room that it takes up. */
export function textsOf(svg: string): readonly (Box & {readonly text: string; readonly size: number})[] {
  return [...svg.matchAll(/<text(?: class="([^"]+)")? x="([\d.]+)" y="([\d.]+)"[^>]*>([^<]*)<\/text>/gu)].map(
    ([, classes = '', x, y, written = '']) => {
      const names = classes.split(' ')
      const sizes = names.map(letterSize).filter((one) => !Number.isNaN(one))
      const size = sizes.at(-1) ?? letterSize('figure-wide text')
      const text = written
        .replaceAll('&amp;', '&')
        .replaceAll('&lt;', '<')
        .replaceAll('&gt;', '>')
        .replaceAll('&quot;', '"')
      const width = textWidth(text, size, names.includes('figure-strong'))
      const middle = names.includes('figure-mid')
      const left = Number(x) - (middle ? width / 2 : 0)
      return {
        text,
        size,
        left,
        right: left + width,
        top: Number(y) - size * 0.75,
        bottom: Number(y) + size * 0.22,
      }
    },
  )
}
