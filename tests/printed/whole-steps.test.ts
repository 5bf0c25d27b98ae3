import {expect, test} from 'vitest'
import {startChromium, startFirefox} from '../offline/browsers.ts'
import {addressOf, copyToOddFolder} from '../offline/odd-folder.ts'

const folder = copyToOddFolder()

/** Lays the sheets out and gives, for each step that goes over to a further sheet, its number where it would fit a sheet by itself. */
const partedWithoutNeed = `(() => {
  dispatchEvent(new Event('beforeprint'))
  document.querySelector('link[data-paper]').media = 'all'
  const room = document.querySelector('.sheet-body').clientHeight
  const steps = []
  document.querySelectorAll('.sheet').forEach((sheet, place) => {
    for (const unit of sheet.querySelectorAll('.sheet-body > table > tbody')) {
      if (unit.rows[0].querySelector('.step-again')) steps[steps.length - 1].push({unit, place})
      else steps.push([{unit, place}])
    }
  })
  const parted = steps.filter((one) => one[0].place !== one[one.length - 1].place)
  const height = (one) => one.reduce((sum, {unit}) => sum + unit.offsetHeight, 0)
  return {steps: steps.length, long: parted.length, parted: parted.filter((one) => height(one) < room - 1).map((one) => one[0].unit.textContent.slice(0, 60))}
})()`

test.each([
  ['chromium', () => startChromium(true)],
  ['firefox', () => startFirefox(true)],
] as const)(
  '%s prints a step with its cautions, readings and limits on one sheet where it fits one',
  async (_name, start) => {
    const browser = await start()
    for (const procedure of ['wear-rings', 'pump-unit-removal', 'reassembly']) {
      const visit = await browser.visit(addressOf(folder, `p/5p/${procedure}.html`))
      const found: unknown = await visit.evaluate(partedWithoutNeed)
      expect(found, procedure).toMatchObject({parted: []})
      expect(found, procedure).toHaveProperty('steps', expect.any(Number))
      await visit.done()
    }
    await browser.close()
  },
)
