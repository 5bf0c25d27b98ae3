import {perfectMixing, ventilationTime, ventilationTimeNote} from '../calculations/entry/ventilation-time.ts'
import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Position, Tank, Vessel} from '../handbook-model/vessel-content.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {calculationSources} from './calculation-sources.ts'
import {computedValue} from './computed-value.ts'
import {roundedUp, tracedConstant} from './value-builder.ts'

/** How long the tank of a pump is ventilated before the first reading; the readings and the permit decide. */
export function ventilationValues(
  {
    vessel,
    position,
    tank,
    content,
  }: {
    readonly vessel: Vessel
    readonly position: Position
    readonly tank: Tank
    readonly content: Content
  },
  files: ContentFiles,
): readonly ComputedValue[] {
  return [
    computedValue(
      {
        id: 'tank.ventilation-time',
        title: 'shortest ventilation before the first reading',
        ofDesign: false,
        place: tank.place,
        where: position.tag,
        note: ventilationTimeNote,
        formula: ventilationTimeNote.formula.slice(0, 1),
        sources: calculationSources['ventilation-time'],
        inputs: {
          changes: {
            symbol: 'N',
            title: 'air changes by house rule',
            datum: content.office.house.entryAirChanges,
          },
          volume: {symbol: 'V', title: 'tank volume', datum: tank.volume},
          flow: {symbol: 'Q', title: 'air flow of the ventilator', datum: vessel.supplies.ventilatorFlow},
        },
        constants: [tracedConstant('k', 'mixing', '1', 'air taken as well mixed')],
        compute: ({changes, volume, flow}) => ({
          quantity: roundedUp(ventilationTime({volume, flow, mixing: perfectMixing}, changes), 'h', 1),
          unit: 'h',
          decimals: 1,
          condition: 'then the readings and the permit decide',
          rounding: 'up to 0.1 h, never shorter',
        }),
      },
      files,
    ),
  ]
}
