import {figureOf} from '../figure.ts'
import {escaped, textLines} from '../svg-text.ts'
import type {StationCut} from './cut.ts'
import {drawCut} from './draw-cut.ts'
import {drawView, isLong, scaleOf} from './station-view.ts'
import type {DrawnView, StationsFigure, StationView} from './view.ts'

/** One reading of a figure: its stations, and the part at which they lie. */
export interface StationPanel {
  readonly view: Omit<StationView, 'circles' | 'r' | 'dimension' | 'way'>
  /** Planes of the stations by name, in the order of the reading. */
  readonly planes: readonly string[]
  /** Nothing where a length of it is not known. */
  readonly cut: StationCut | undefined
  readonly seenFrom: 'suction' | 'motor'
  /** The part as it lies: "suction cover, ring side up". */
  readonly part: string
  /** Diameter with its unit; "not known" in the words of the page where nobody knows it. */
  readonly dimension: string | undefined
  /** What the drawing tells, as a sentence without its full stop. */
  readonly told: string
  /** The same with each station by number and name, for who does not see it. */
  readonly alternative: string
}

/** Words of the drawing that no author wrote. */
export interface StationWords {
  readonly suctionSide: string
  /** In place of a section whose lengths are not known. */
  readonly noSection: string
  readonly alternative: (parts: readonly string[]) => string
}

const letter = 36
const step = 44
const top = 6
const gap = 30

/**
 * Where the stations of one or two readings lie: left the section of the part with the planes, right the view along the axis
 * of each reading with directions, stations, the way in which degrees count, instrument and diameter.
 *
 * Section and circles have the proportions of the geometry; a view is as large as its labels leave room for.
 */
export function stationsFigure(panels: readonly StationPanel[], words: StationWords): StationsFigure {
  const views = panels.map(viewOf)
  const beside = panels.length > 1 && views.every(({kind}) => kind === 'bore' || kind === 'outside')
  const wide = beside || views.some(isLong)
  const width = wide ? 1500 : 1200
  const drawn = beside ? sideBySide(panels, views, words) : oneBelowTheOther(panels, views, words, width)
  const alternative = words.alternative(panels.map((panel) => panel.alternative))
  const figure = figureOf({
    size: wide ? 'wide' : 'middle',
    width,
    height: Math.ceil(drawn.bottom + 6),
    drawn: drawn.svg,
    alternative,
    data: `${panels.map(({told}) => told).join('. ')}.`,
  })
  return {...figure, placed: drawn.placed}
}

interface Drawing {
  readonly svg: string
  readonly bottom: number
  readonly placed: StationsFigure['placed']
}

/** Sections on the left, those of two parts one above the other, and the views beside each other at one scale. */
function sideBySide(
  panels: readonly StationPanel[],
  views: readonly StationView[],
  words: StationWords,
): Drawing {
  const sections = 470
  const wide = (1500 - sections) / panels.length - gap - 4
  const scale = Math.min(...views.map((view) => scaleOf(view, wide)))
  const draw = (middle: number): readonly DrawnView[] =>
    views.map((view, index) =>
      drawView(view, {left: sections + gap + index * (wide + gap), top, width: wide, middle}, scale),
    )
  const drawn = draw(Math.max(...draw(0).map((one) => one.middle)))
  const bottom = Math.max(...drawn.map((one) => one.bottom), 560)
  const cuts = sharedCuts(panels)
  const each = (bottom - top) / cuts.length
  const left = cuts.map((one, index) =>
    drawPart(one, {left: 6, top: top + index * each, width: sections - 6, height: each - 24}, words),
  )
  return {
    svg: [...left, ...drawn.map(({svg}) => svg)].join(''),
    bottom,
    placed: drawn.map(({placed}) => placed),
  }
}

/** Each reading in a row of its own: section and view. */
function oneBelowTheOther(
  panels: readonly StationPanel[],
  views: readonly StationView[],
  words: StationWords,
  width: number,
): Drawing {
  return panels.reduce<Drawing>(
    (above, panel, index) => {
      const view = views[index]
      if (!view) return above
      const sections = isLong(view) ? 600 : 480
      const from = index === 0 ? top : above.bottom + 2 * gap
      const wide = width - sections - gap - 8
      const row = drawView(view, {left: sections + gap, top: from, width: wide}, scaleOf(view, wide))
      const bottom = Math.max(row.bottom, from + 440)
      const part = drawPart([panel], {left: 6, top: from, width: sections - 6, height: bottom - from}, words)
      return {svg: `${above.svg}${part}${row.svg}`, bottom, placed: [...above.placed, row.placed]}
    },
    {svg: '', bottom: 0, placed: []},
  )
}

/** The view of a panel; without geometry a circle of no size. */
function viewOf({view, cut, dimension, seenFrom}: StationPanel): StationView {
  const r = cut?.surface.r ?? 1
  return {
    ...view,
    circles: cut?.circles ?? [{r, hidden: true}],
    r,
    dimension: dimension === undefined ? undefined : {r: cut ? dimensioned(cut) : r, text: dimension},
    way: seenFrom === 'suction' ? 1 : -1,
  }
}

/** The circle that the dimension below the view names. */
function dimensioned(cut: StationCut): number {
  return cut.dimension ?? cut.surface.r
}

/** Panels of one part share its section. */
function sharedCuts(panels: readonly StationPanel[]): readonly (readonly StationPanel[])[] {
  const parts = new Map<string, StationPanel[]>()
  for (const panel of panels) {
    const key = panel.cut?.part ?? panel.part
    parts.set(key, [...(parts.get(key) ?? []), panel])
  }
  return [...parts.values()]
}

interface Area {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** The words of a part above its section. */
function drawPart(panels: readonly StationPanel[], area: Area, words: StationWords): string {
  const [first] = panels
  if (!first) return ''
  const heading = textLines(first.part, letter, area.width, true)
  const headed = area.top + heading.length * step + 6
  const svg = heading.map((text, index) => word(text, area.left, area.top + 30 + index * step, true)).join('')
  const {cut} = first
  if (!cut) {
    const lines = textLines(words.noSection, letter, area.width)
    return svg + lines.map((text, index) => word(text, area.left, headed + 60 + index * step)).join('')
  }
  const marks = panels.flatMap((panel) =>
    panel.cut ? [{kind: panel.view.kind, surface: panel.cut.surface, planes: panel.planes}] : [],
  )
  // The word for the suction side stands on that side of the drawing.
  const room = {
    left: area.left,
    width: area.width,
    top: headed + (cut.turned ? step + 36 : 36),
    height: area.top + area.height - headed - step - 76,
  }
  const drawn = drawCut(cut, marks, room)
  const side = word(words.suctionSide, area.left, cut.turned ? drawn.top - 40 : drawn.bottom + 64)
  return svg + drawn.svg + side
}

function word(text: string, x: number, y: number, strong = false): string {
  return `<text${strong ? ' class="strong"' : ''} x="${Math.round(x)}" y="${Math.round(y)}">${escaped(text)}</text>`
}
