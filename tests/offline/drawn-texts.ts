import {z} from 'zod'
import type {BrowserWindow} from './browsers.ts'

const millimetres = z.number()

/** A text of a drawing where the browser sets it, in millimetres of the print. */
const drawnText = z.object({
  text: z.string(),
  left: millimetres,
  right: millimetres,
  top: millimetres,
  bottom: millimetres,
  /** Height of a capital letter. */
  capital: millimetres,
  /** Set light although its class asks for strong letters. */
  isTooLight: z.boolean(),
})

/** A drawing as the browser sets it. */
const drawnFigure = z.object({
  path: z.string(),
  width: millimetres,
  height: millimetres,
  texts: z.array(drawnText),
})

export type DrawnText = z.infer<typeof drawnText>

export type DrawnFigure = z.infer<typeof drawnFigure>

/** Sets drawings in a shadow tree each, so that their styles stay apart, and measures every text. */
const measure = `figures => figures.map(({path, svg, width}) => {
  const host = document.createElement('div')
  host.style.cssText = 'position:absolute;left:0;top:0;width:' + width + 'mm'
  document.body.append(host)
  const root = host.attachShadow({mode: 'open'})
  root.innerHTML = svg
  const drawing = root.querySelector('svg')
  const view = drawing.viewBox.baseVal
  const scale = width / view.width
  const back = drawing.getScreenCTM().inverse()
  const texts = [...drawing.querySelectorAll('text')].map(one => {
    const box = one.getBBox()
    // The ink of letters: without the room that a typeface keeps above capitals and below the line.
    const inset = box.height * 0.2
    const matrix = back.multiply(one.getScreenCTM())
    const corners = [[box.x, box.y + inset], [box.x + box.width, box.y + box.height - inset]]
      .flatMap(([x, y], index, all) => [[x, y], [x, all[1 - index][1]]])
      .map(([x, y]) => new DOMPoint(x, y).matrixTransform(matrix))
    const xs = corners.map(({x}) => x * scale)
    const ys = corners.map(({y}) => y * scale)
    const size = parseFloat(getComputedStyle(one).fontSize)
    return {
      text: one.textContent,
      left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys),
      isTooLight: one.closest('.strong') !== null && Number(getComputedStyle(one).fontWeight) < 600,
      capital: size * Math.hypot(matrix.a, matrix.b) * scale * 0.716,
    }
  })
  host.remove()
  return {path, width, height: view.height * scale, texts}
})`

/** Measures drawings, each at the width that it has on paper. */
export async function drawnFigures(
  window: Pick<BrowserWindow, 'visit'>,
  address: string,
  figures: readonly {readonly path: string; readonly svg: string; readonly width: number}[],
): Promise<readonly DrawnFigure[]> {
  const {evaluate} = await window.visit(address)
  const told: unknown = await evaluate(`JSON.stringify((${measure})(${JSON.stringify(figures)}))`)
  return z.array(drawnFigure).parse(JSON.parse(String(told)))
}

/** What is wrong with the texts of a drawing: outside of it, over each other, or too small to read on paper. */
export function faultsOfTexts({path, width, height, texts}: DrawnFigure): readonly string[] {
  return texts.flatMap((one, index) => [
    ...(one.left < 0 || one.top < 0 || one.right > width || one.bottom > height
      ? [`${path}: "${one.text}" outside of the drawing`]
      : []),
    ...(one.isTooLight ? [`${path}: "${one.text}" is not set in strong letters`] : []),
    ...(one.capital < leastCapital ? [`${path}: "${one.text}" ${one.capital.toFixed(2)} mm high`] : []),
    ...texts
      .slice(index + 1)
      .flatMap((other) =>
        one.right > other.left && other.right > one.left && one.bottom > other.top && other.bottom > one.top
          ? [`${path}: "${one.text}" over "${other.text}"`]
          : [],
      ),
  ])
}

/** Least height of a capital letter in print, in millimetres; a hundredth for the rounding of sizes. */
const leastCapital = 2.49
