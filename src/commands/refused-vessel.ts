import {nearestWord} from '../check/nearest-word.ts'
import type {Content} from '../handbook-model/content.ts'
import type {Outcome} from './outcome.ts'

/** The answer to `--vessel` with an id that the content does not have; undefined where it has all that were named. */
export function refusedVessel(named: readonly string[], content: Content | undefined): Outcome | undefined {
  const known = [...(content?.vessels.keys() ?? [])]
  const unknown = content && named.find((id) => !known.includes(id))
  if (unknown === undefined) return undefined
  const nearest = nearestWord(unknown, known) ?? known[0] ?? ''
  const others = known.filter((id) => id !== nearest).map((id) => ` or \`${id}\``)
  return {
    exitStatus: 2,
    out: '',
    err: `Unexpected vessel \`${unknown}\`, expected \`${nearest}\`${others.join('')}\n`,
  }
}
