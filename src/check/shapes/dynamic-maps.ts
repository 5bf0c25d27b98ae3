import {z} from 'zod'
import type {Component, FactValue} from '../../handbook-model/vessel-content.ts'
import {refuse} from './placed-shape.ts'
import {isPlainMap, isPlainScalar, type PlainMap, placeKey} from './plain-tree.ts'

/** A map whose keys are words of the content, handed over with the place of each key. */
export const openMap = z.custom<PlainMap>(isPlainMap, {error: 'a map'})

/** `facts: {backstop: fitted, cargo-seal: {value: not known, reason: …}}`. */
export const factValues = openMap.transform((map, context): readonly FactValue[] => {
  const values: FactValue[] = []
  for (const [key, place] of map[placeKey].keys) {
    const value = map[key]
    const fact = {id: key, place}
    if (isPlainScalar(value) && value.text !== 'not known') {
      values.push({fact, value: value.text, place: value.place})
      continue
    }
    const reason = isPlainMap(value) ? value['reason'] : undefined
    const said = isPlainMap(value) ? value['value'] : undefined
    if (isPlainMap(value) && !(isPlainScalar(said) && said.text === 'not known'))
      refuse(
        context,
        `Unexpected map for fact \`${key}\`, expected a value or \`{value: not known, reason: …}\``,
        {
          ruleId: 'no-wrong-shape',
          place,
          note: `Write \`${key}:\` and the value`,
        },
      )
    else if (isPlainScalar(reason) && reason.text.trim() !== '')
      values.push({fact, value: undefined, reason: reason.text, place})
    else
      refuse(
        context,
        `Unexpected fact \`${key}\` that is not known without a reason, expected \`{value: not known, reason: …}\``,
        {ruleId: 'no-missing-key', place, note: 'Say why nobody knows it'},
      )
  }
  return values
})

const componentKinds = ['head', 'motor', 'sleeve', 'stack'] as const

/** `components: {head: 22-0417, …}`: serial numbers of what is fitted. */
export const components = openMap.transform((map, context): readonly Component[] => {
  const found: Component[] = []
  for (const [key, place] of map[placeKey].keys) {
    const kind = componentKinds.find((one) => one === key)
    const serial = map[key]
    if (kind && isPlainScalar(serial) && serial.text !== '')
      found.push({kind, serial: serial.text, place: serial.place})
    else
      refuse(
        context,
        `Unexpected component \`${key}\`, expected one of ${componentKinds.map((one) => `\`${one}\``).join(', ')} with a serial number`,
        {
          ruleId: 'no-unknown-key',
          place,
          note: 'Write the serial number from the nameplate behind the component',
        },
      )
  }
  return found
})
