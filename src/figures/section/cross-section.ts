import {escaped, rounded} from '../svg-text.ts'
import {type Balloon, balloonsOf} from './balloons.ts'
import {type Detail, detailsOf, drawDetails} from './details.ts'
import {levelsOf} from './levels.ts'
import {sectionOutlines} from './outlines.ts'
import {frameOf, lineOf, paint, placed, type SectionFrame} from './paint.ts'
import {partsOfSection, type SectionGeometry} from './section-geometry.ts'
import {type SectionTold, sectionText} from './section-text.ts'
import type {Outline, Point} from './shape.ts'

/** Cross-section of a pump: SVG text, what it tells in words, and what it was drawn from. */
export interface CrossSection {
  readonly svg: string
  readonly alternative: string
  readonly frame: SectionFrame
  readonly outlines: readonly Outline[]
  readonly balloons: readonly Balloon[]
  readonly details: readonly Detail[]
}

/** What a cross-section needs beside the geometry. */
export interface SectionInput extends SectionTold {
  readonly geometry: SectionGeometry
}

/**
 * Section through the axis of a submerged pump, from the bottom of the well to the foot of the pipe stack, with a detail of
 * the cargo seal and one of the lip below the motor.
 *
 * @throws {Error}
 *   When a part that the pump has stands without its balloon.
 */
export function crossSection({geometry, variant, parts, words}: SectionInput): CrossSection {
  const outlines = sectionOutlines(geometry, variant)
  const at = levelsOf(geometry)
  const frame = frameOf(geometry, at)
  const numbers = partsOfSection(variant).map((part) => {
    const balloon = parts[part]?.balloon
    if (balloon === undefined)
      throw new Error(`Unexpected part \`${part}\` without a balloon, expected one of the parts list`)
    return {part, number: balloon}
  })
  const radius = frame.text * 0.8
  const balloons = balloonsOf(outlines, numbers, {
    left: frame.left + radius + 4,
    right: frame.right - radius - 4,
    low: frame.floor + radius + 4,
    high: frame.ceiling - radius - 4,
    gap: radius * 2.3,
  })
  const details = detailsOf(geometry, at, frame, words)
  const alternative = sectionText({variant, parts, words})
  const axis = `<path class="a" d="${lineOf([placed([0, -at.wall * 2], frame), placed([0, at.top + at.wall * 2], frame)])}"/>`
  const numbersDrawn = balloons.map((one) => balloonDrawn(one, frame, radius)).join('')
  return {
    svg: [
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${frame.width} ${frame.height}" role="img" aria-label="${escaped(alternative)}">`,
      styles(frame),
      paint(outlines, frame),
      axis,
      drawDetails(details, outlines, frame),
      numbersDrawn,
      '</svg>',
    ].join(''),
    alternative,
    frame,
    outlines,
    balloons,
    details,
  }
}

/** Circle with its number, and a leader that ends in a dot. */
function balloonDrawn({at, anchor, number}: Balloon, frame: SectionFrame, radius: number): string {
  const long = Math.hypot(anchor[0] - at[0], anchor[1] - at[1])
  const edge: Point = [
    at[0] + ((anchor[0] - at[0]) * radius) / long,
    at[1] + ((anchor[1] - at[1]) * radius) / long,
  ]
  const [x, y] = placed(at, frame)
  const [dotX, dotY] = placed(anchor, frame)
  return [
    `<path class="l" d="${lineOf([placed(edge, frame), placed(anchor, frame)])}"/>`,
    `<circle class="d" cx="${dotX}" cy="${dotY}" r="${rounded(frame.line * 0.45)}"/>`,
    `<circle class="b" cx="${x}" cy="${y}" r="${Math.round(radius)}"/>`,
    `<text x="${x}" y="${y}" dy=".35em">${escaped(number)}</text>`,
  ].join('')
}

/** Widths of lines, in millimetres of a print of 90 mm, and size of text. */
function styles({text, line}: SectionFrame): string {
  const one = (millimetres: number): string => String(Math.round(line * millimetres * 100) / 100)
  return [
    '<style>',
    `path,circle{fill:none;stroke:#000;stroke-linejoin:round;stroke-width:${one(0.18)}}`,
    `.w{fill:#fff;stroke-width:${one(0.33)}}.v{fill:#fff;stroke-width:${one(0.22)}}.o{fill:#fff;stroke:none}.s{fill:#000;stroke-width:${one(0.1)}}.k{fill:#000;stroke:#fff;stroke-width:${one(0.1)}}.h{stroke-width:${one(0.13)}}`,
    `.a{stroke-dasharray:${one(3)} ${one(0.7)} ${one(0.5)} ${one(0.7)}}.d{fill:#000;stroke:#fff;stroke-width:${one(0.15)}}.f{stroke-width:${one(0.33)}}.z{stroke-dasharray:${one(0.8)} ${one(0.5)}}.b{fill:#fff;stroke-width:${one(0.3)}}`,
    `text{font:700 ${text}px Arial,Helvetica,sans-serif;text-anchor:middle}`,
    '</style>',
  ].join('')
}
