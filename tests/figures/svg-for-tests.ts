import {textWidth} from '../../src/figures/svg-text.ts'

/** A box of a figure in units of its view box. */
export interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** A text with the room that it takes up. */
export interface TextBox extends Box {
  readonly text: string
  readonly size: number
}

/** Height of a capital letter of a sans-serif face, in shares of its size. */
export const capital = 0.716

/** Millimetres that a figure is wide on paper. */
export const paperWidths = {small: 52, middle: 120, wide: 150} as const

/** Size of the view box. */
export function viewOf(svg: string): {readonly width: number; readonly height: number} {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/u.exec(svg) ?? []
  return {width: Number(width), height: Number(height)}
}

/** Declarations of a class in the styles of the drawing itself. */
function ruleOf(svg: string, name: string): string {
  return new RegExp(`\\.${name}\\{([^}]*)\\}`, 'u').exec(svg)?.[1] ?? ''
}

/** A drawing whose texts carry their class each, and not together in a group. */
export function singleTexts(svg: string): string {
  return svg.replace(
    /<g class="([^"]*)">((?:<text[^>]*>[^<]*<\/text>)+)<\/g>/gu,
    (_, names: string, texts: string) => texts.replaceAll('<text', `<text class="${names}"`),
  )
}

/** Every text with the room that it takes up, by the styles that the drawing carries; a turned one reads upwards. */
export function textsOf(svg: string): readonly TextBox[] {
  const usual = Number(/svg\{font:([\d.]+)px/u.exec(svg)?.[1])
  return [...singleTexts(svg).matchAll(/<text\b([^>]*)>([^<]*)<\/text>/gu)].map(
    ([, how = '', written = '']) => {
      const attribute = (name: string): string => new RegExp(`\\b${name}="([^"]*)"`, 'u').exec(how)?.[1] ?? ''
      const rules = attribute('class')
        .split(' ')
        .map((name) => ruleOf(svg, name))
        .join(';')
      const size = Number(/font-size:([\d.]+)px/u.exec(rules)?.[1] ?? usual)
      const text = written
        .replaceAll('&amp;', '&')
        .replaceAll('&lt;', '<')
        .replaceAll('&gt;', '>')
        .replaceAll('&quot;', '"')
      const width = textWidth(text, size, rules.includes('font-weight:700'))
      const anchor = /text-anchor:(\w+)/u.exec(rules)?.[1]
      const before = anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0
      const [above, below] = rules.includes('dominant-baseline:central') ? [0.5, 0.5] : [0.75, 0.22]
      const turned = /translate\(([\d.-]+) ([\d.-]+)\) rotate\(-90\)/u.exec(attribute('transform'))
      const [x, y] = turned
        ? [Number(turned[1]), Number(turned[2])]
        : [Number(attribute('x')), Number(attribute('y'))]
      const box = turned
        ? {left: x - size * above, right: x + size * below, top: y - (width - before), bottom: y + before}
        : {left: x - before, right: x - before + width, top: y - size * above, bottom: y + size * below}
      return {text, size, ...box}
    },
  )
}

/** Whether two boxes share room. */
export function overlap(one: Box, other: Box): boolean {
  return one.right > other.left && other.right > one.left && one.bottom > other.top && other.bottom > one.top
}
