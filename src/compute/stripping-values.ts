import {riserPurgePressure, riserPurgePressureNote} from '../calculations/gas/riser-purge-pressure.ts'
import {strippingCeiling, strippingCeilingNote} from '../calculations/planning/stripping-ceiling.ts'
import type {ComputedValue} from '../handbook-model/computed.ts'
import type {Stripping} from '../handbook-model/design-content.ts'
import type {HungPosition, Tank, Vessel} from '../handbook-model/vessel-content.ts'
import type {ContentFiles} from '../messages/add-message.ts'
import {printedText, printQuantity} from '../quantities/print-quantity.ts'
import {quantityOf} from '../quantities/quantity.ts'
import {calculationSources} from './calculation-sources.ts'
import {computedValue} from './computed-value.ts'
import {roundedUp, statedValue, tracedConstant, tracedStep, unknownValue} from './value-builder.ts'

/** What the stripping of one pump is judged by. */
interface StrippingBench {
  readonly vessel: Vessel
  readonly position: HungPosition
  readonly tank: Tank
  readonly riser: Stripping
}

/** Density of the water of the check; salt and temperature move it by less than the pressure is rounded. */
const water = quantityOf('density', 1000)

/** Stripping of one pump: what the ship recorded, what the regulation allows, and the gas that empties the riser. */
export function strippingValues(bench: StrippingBench, files: ContentFiles): readonly ComputedValue[] {
  return [recordedValue(bench), ceilingValue(bench, files), gasPressureValue(bench, files)]
}

function recordedValue({tank}: StrippingBench): ComputedValue {
  const facts = {
    id: 'stripping.recorded',
    title: `recorded stripping quantity of tank ${tank.tag}`,
    ofDesign: false,
  }
  return tank.recordedResidue
    ? statedValue(tank.recordedResidue, facts, facts.title)
    : unknownValue([`${facts.title} (not stated for this ship)`], {...facts, sources: [], place: tank.place})
}

/** The stricter figure of the categories X and Y counts for every cargo of the tank. */
function ceilingValue({vessel, position}: StrippingBench, files: ContentFiles): ComputedValue {
  const {ceiling, paragraph} = strippingCeiling({built: vessel.built, category: 'X'})
  return computedValue(
    {
      id: 'stripping.ceiling',
      title: 'most residue that the regulation allows in a tank and its piping',
      ofDesign: false,
      place: vessel.place,
      where: position.tag,
      note: strippingCeilingNote,
      formula: ['V ceiling = V tier'],
      symbols: [{symbol: 'V ceiling', meaning: 'most residue that the regulation allows'}],
      sources: calculationSources['stripping-ceiling'],
      inputs: {},
      constants: [
        tracedConstant(
          'V tier',
          `categories X and Y, ship built on ${vessel.built}`,
          printedText(printQuantity(ceiling, 'l', 0)),
          `regulation ${paragraph}`,
        ),
      ],
      compute: () => ({
        quantity: ceiling,
        unit: 'l',
        decimals: 0,
        condition: `regulation ${paragraph}, categories X and Y, without the tolerance of the water test`,
        rounding: 'to a whole l, rounded once, half to even',
      }),
    },
    files,
  )
}

function gasPressureValue({position, riser}: StrippingBench, files: ContentFiles): ComputedValue {
  return computedValue(
    {
      id: 'stripping.gas-pressure',
      title: 'gas pressure that empties a riser full of water',
      ofDesign: false,
      place: position.stackLength.place,
      where: position.tag,
      note: riserPurgePressureNote,
      formula: ['H = L + h foot + h top', 'p = ρ·g·H + p back'],
      sources: calculationSources['riser-purge-pressure'],
      inputs: {
        stackLength: {symbol: 'L', title: 'stack length', datum: position.stackLength},
        foot: {
          symbol: 'h foot',
          title: 'foot of the stripping pipe below the stack',
          datum: riser.footBelowStack,
        },
        top: {
          symbol: 'h top',
          title: 'highest place of the stripping pipe above deck',
          datum: riser.topAboveDeck,
        },
        backPressure: {symbol: 'p back', title: 'back pressure at the manifold', datum: riser.backPressure},
      },
      constants: [
        tracedConstant('ρ', 'density of water', '1000 kg/m³', 'from memory'),
        tracedConstant('g', 'standard gravity', '9.80665 m/s²', 'definition'),
      ],
      compute: ({stackLength, foot, top, backPressure}) => {
        const height = quantityOf('length', stackLength.si + foot.si + top.si)
        return {
          quantity: roundedUp(riserPurgePressure({density: water, height, backPressure}), 'bar(g)', 2),
          unit: 'bar(g)',
          decimals: 2,
          condition: 'water, back pressure at the manifold included',
          rounding: 'up to 2 decimals of bar(g), never lower',
          steps: [tracedStep('H', 'height of the riser', height, 'm')],
        }
      },
    },
    files,
  )
}
