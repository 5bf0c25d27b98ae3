import type {HeldRows} from '../../published-values/agreement.ts'
import {jointAgreements} from './joint-agreements.ts'
import {strengthAgreements} from './strength-agreements.ts'
import {torqueAgreements} from './torque-agreements.ts'

/** Bolted joints against every published row. */
export const agreements: readonly HeldRows[] = [
  ...strengthAgreements,
  ...torqueAgreements,
  ...jointAgreements,
]
