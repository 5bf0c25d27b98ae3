import {describe, expect, test} from 'vitest'
import {stopsTheBuild} from '../../src/messages/add-message.ts'
import {checkAfter, type Texts} from './texts-for-tests.ts'

const vessel = 'vessels/vessel-a/vessel.yaml'
const design = 'designs/design-a.yaml'

describe('a value that cannot exist stops the build', () => {
  const rest = 'expected more than zero no-impossible-value | Read the drawing or the record again'
  test.each<[string, string, string | RegExp, string, string]>([
    ['deadweight', vessel, '17600 t', '0 t', '7:13'],
    ['system pressure', vessel, '240 bar(g)', '0 bar(g)', '10:20'],
    ['system pressure', vessel, '240 bar(g)', '−5 bar(g)', '10:20'],
    ['return pressure', vessel, '6 bar(g)', '0.0 bar(g)', '11:20'],
    ['tank volume', vessel, '484 m³', '0 m³', '18:31'],
    ['tank height', vessel, /(?<=484 m³, height: )9\.62 m/u, '0 m', '18:47'],
    ['stack length', vessel, '9.2 m', '0 m', '32:19'],
    ['running diameter', design, '214 mm', '0 mm', '27:23'],
    ['mass', design, '186 kg', '0 kg', '41:41'],
  ])('%s in %s: %s as %s', (what, path, old, words, at) => {
    const {messages, files} = checkAfter((texts) => texts.replace(path, old, words))
    expect(messages).toEqual([`${path}:${at} Unexpected ${what} of \`${words}\`, ${rest}`])
    expect(stopsTheBuild(files)).toBe(true)
  })

  test.each(['139.7 mm', '139 mm'])('pipes of %s and 139.7 mm do not nest', (bore) => {
    expect(checkAfter((texts) => texts.replace(design, '150 mm', bore)).messages).toEqual([
      `${design}:33:20 Unexpected outer pipe that is not larger than the inner pipe, expected pipes that nest no-impossible-value | Read the drawing or the record again | see ${design}:34:23`,
    ])
  })
})

describe('an unusual value is warned of, and the build goes on', () => {
  const rest = 'no-implausible-value | Read the drawing or the record again; the build goes on'
  test.each([
    ['deadweight', vessel, '17600 t', '2999 t', '7:13', '3000 t to 50000 t'],
    ['deadweight', vessel, '17600 t', '50001 t', '7:13', '3000 t to 50000 t'],
    ['system pressure', vessel, '240 bar(g)', '159 bar(g)', '10:20', '160 bar(g) to 350 bar(g)'],
    ['system pressure', vessel, '240 bar(g)', '351 bar(g)', '10:20', '160 bar(g) to 350 bar(g)'],
    ['return pressure', vessel, '6 bar(g)', '13 bar(g)', '11:20', '2 bar(g) to 12 bar(g)'],
    ['tank volume', vessel, '484 m³', '99 m³', '18:31', '100 m³ to 3000 m³'],
    ['stack length', vessel, '9.2 m', '40 m', '32:19', '6 m to 22 m'],
    ['stack length', vessel, '9.2 m', '5.99 m', '32:19', '6 m to 22 m'],
    ['running diameter', design, '214 mm', '281 mm', '27:23', '90 mm to 280 mm'],
    ['running diameter', design, '214 mm', '89 mm', '27:23', '90 mm to 280 mm'],
  ])('%s in %s: %s as %s', (what, path, old, words, at, window) => {
    const {messages, files} = checkAfter((texts) => texts.replace(path, old, words))
    expect(messages).toEqual([
      `${path}:${at} Unexpected ${what} of \`${words}\` outside the usual window, expected ${window} ${rest}`,
    ])
    expect(stopsTheBuild(files)).toBe(false)
  })

  test.each<[string, (texts: Texts) => void]>([
    ['the ends of the window', (texts) => texts.replace(vessel, '9.2 m', '22 m')],
    ['the other end of it', (texts) => texts.replace(vessel, '9.2 m', '6 m')],
    ['the same in millimetres', (texts) => texts.replace(vessel, '9.2 m', '9200 mm')],
  ])('%s are usual', (_what, spoil) => {
    expect(checkAfter(spoil).messages).toEqual([])
  })
})
