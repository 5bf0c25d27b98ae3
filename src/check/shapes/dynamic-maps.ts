import {z} from 'zod'
import type {FittedMaterial} from '../../handbook-model/material-content.ts'
import {type Component, componentKinds, type FactValue} from '../../handbook-model/vessel-content.ts'
import {expectedWord} from '../nearest-word.ts'
import {refuse, text} from './placed-shape.ts'
import {isPlainMap, isPlainScalar, type PlainMap, placeKey, placeOfPlain} from './plain-tree.ts'

/** A map whose keys are words of the content, handed over with the place of each key. */
export const openMap = z.custom<PlainMap>(isPlainMap, {error: 'a map'})

/** `facts: {backstop: fitted, cargo-seal: {value: not known, reason: …}}`. */
export const factValues = openMap.transform((map, context) => knownOrNot(map, 'fact', context))

/** `materials: {cargo-rings: fkm, cargo-lips: {value: not known, reason: …}}`. */
export const fittedMaterials = openMap.transform((map, context): readonly FittedMaterial[] =>
  knownOrNot(map, 'material of', context).map(({fact, value, reason, place}) => ({
    parts: fact,
    material: value === undefined ? undefined : {id: value, place},
    ...(reason === undefined ? {} : {reason}),
  })),
)

/** A map of words, each of them a word or `{value: not known, reason: …}`. */
function knownOrNot(map: PlainMap, what: string, context: z.core.$RefinementCtx): readonly FactValue[] {
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
        `Unexpected map for ${what} \`${key}\`, expected a value or \`{value: not known, reason: …}\``,
        {
          ruleId: 'no-wrong-shape',
          place,
          note: `Write \`${key}:\` and the value`,
        },
      )
    else if (isPlainScalar(reason) && reason.text.trim() !== '') {
      if (isPlainMap(value)) refuseOthers(value, ['value', 'reason'], context)
      values.push({fact, value: undefined, reason: reason.text.trim(), place})
    } else
      refuse(
        context,
        `Unexpected ${what} \`${key}\` that is not known without a reason, expected \`{value: not known, reason: …}\``,
        {ruleId: 'no-missing-key', place, note: 'Say why nobody knows it'},
      )
  }
  return values
}

function refuseOthers(map: PlainMap, known: readonly string[], context: z.core.$RefinementCtx): void {
  for (const [key, place] of map[placeKey].keys) {
    if (known.includes(key)) continue
    refuse(context, `Unexpected key \`${key}\`, ${expectedWord(key, known, 'a key')}`, {
      ruleId: 'no-unknown-key',
      place,
      note: `The keys here are ${known.join(', ')}`,
    })
  }
}

/** `components: {head: 22-0417, …}`: serial numbers of what is fitted. */
export const components = openMap.transform((map, context): readonly Component[] => {
  const found: Component[] = []
  for (const [key, place] of map[placeKey].keys) {
    const kind = componentKinds.find((one) => one === key)
    const serial = text.safeParse(map[key])
    if (kind && serial.success)
      found.push({kind, serial: serial.data, place: placeOfPlain(map[key]) ?? place})
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
