import type {Caution, SignalWord} from '../handbook-model/office-content.ts'
import type {BoundCaution, CautionLine} from '../handbook-model/pages.ts'
import type {CautionUse} from '../handbook-model/procedure.ts'
import {found, type PumpDesk} from './desk.ts'
import {cautionLink} from './page-paths.ts'
import {standing} from './variant.ts'

/** The gravest word first. */
export const rankOfWord: Readonly<Record<SignalWord, number>> = {DANGER: 0, WARNING: 1, CAUTION: 2, NOTICE: 3}

/** Numbers the cautions of one page by first use: the same caution keeps its number. */
export interface CautionNumbers {
  /** The number, and whether the caution stands on the page already. */
  next(id: string): {readonly number: number; readonly again: boolean}
  used(): readonly CautionLine[]
}

/** Starts the numbers of one page. */
export function cautionNumbers(desk: PumpDesk): CautionNumbers {
  const numbers = new Map<string, number>()
  return {
    next: (id) => {
      const known = numbers.get(id)
      const number = known ?? numbers.size + 1
      numbers.set(id, number)
      return {number, again: known !== undefined}
    },
    used: () => [...numbers].map(([id, number]) => cautionLine(cautionOf(id, desk), number)),
  }
}

/** Cautions of a step or section that stand on this pump, each once, the highest word first. */
export function boundCautions(
  uses: readonly CautionUse[],
  desk: PumpDesk,
  numbers: CautionNumbers,
): readonly BoundCaution[] {
  const ids = new Set(uses.filter((use) => standing(use.when, desk).stands).map((use) => use.caution.id))
  const sorted = [...ids]
    .map((id) => cautionOf(id, desk))
    .sort((a, b) => rankOfWord[a.word] - rankOfWord[b.word])
  return sorted.map((caution) => {
    const {number, again} = numbers.next(caution.id)
    const whole = boundCaution(caution, number)
    return again ? shortened(whole) : whole
  })
}

/** A caution that stands in full further up on the page: word, title and advice are said again, the rest is not. */
function shortened(caution: BoundCaution): BoundCaution {
  return {...caution, again: true, hazard: '', consequence: '', protection: []}
}

/** One caution ready to print. */
export function boundCaution(caution: Caution, number: number): BoundCaution {
  return {
    id: caution.id,
    number,
    again: false,
    word: caution.word,
    title: caution.title.en,
    hazard: caution.hazard.en,
    consequence: caution.consequence.en,
    avoid: caution.avoid.map((line) => line.en),
    protection: caution.protection.map((line) => line.en),
    link: cautionLink(caution.id, caution.title.en),
  }
}

/** The short form: number, word and title. */
export function cautionLine(caution: Caution, number: number): CautionLine {
  return {
    number,
    word: caution.word,
    title: caution.title.en,
    link: cautionLink(caution.id, caution.title.en),
  }
}

function cautionOf(id: string, desk: PumpDesk): Caution {
  return found(desk.content.cautions.get(id), `caution ${id}`)
}
