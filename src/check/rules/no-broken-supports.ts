import type {KnownDatum} from '../../handbook-model/datum.ts'
import type {Design} from '../../handbook-model/design-content.ts'
import type {Position} from '../../handbook-model/vessel-content.ts'
import {addMessage, type ContentFiles} from '../../messages/add-message.ts'
import type {Place} from '../../messages/place.ts'

/** A joint of a stack and its distance from the underside of the top plate, in metres. */
interface JointPlace {
  readonly words: string
  readonly at: number
  readonly cause?: Place
}

/**
 * The supports of a pipe stack follow each other from the top plate down, end above its foot and stand clear of its joints.
 *
 * A support takes hold of the bare pipe: at a joint its liner stands on flanges and bolts. Clear is what is farther from a joint than
 * the bolts of a stack joint are long.
 *
 * Accepted: supports at 3.10 m and 6.20 m on a stack of 9.2 m with joints at 2 m, 4 m and 8 m.
 * Rejected: at 9.30 m; at 6.20 m before 3.10 m; at 4.02 m.
 */
export function noBrokenSupports(position: Position, design: Design, files: ContentFiles): void {
  const {stackSupports = [], stackLength, tag} = position
  const joints = jointsOf(position)
  const bolt = design.joints.find(({id}) => id === 'stack-joint-bolts')?.length
  const clear = bolt?.kind === 'known' ? bolt.quantity.si : 0
  let before: KnownDatum<'length'> | undefined
  let numberBefore = 0
  for (const [index, support] of stackSupports.entries()) {
    if (support.kind === 'not-known') continue
    const number = index + 1
    const at = support.quantity.si
    const told = `Unexpected support \`${number}\` of \`${tag}\` at ${written(support)}`
    const tell = (expected: string, note: string, cause: Place | undefined): void => {
      const reason = `${told}, expected ${expected}`
      addMessage(files, support.place, 'no-broken-stack', reason, {note, ...(cause ? {cause} : {})})
    }
    const joint = joints.find((one) => Math.abs(one.at - at) <= clear + 1e-9)
    if (stackLength?.kind === 'known' && at > stackLength.quantity.si + 1e-9)
      tell(
        `one above the foot of the stack at ${written(stackLength)}`,
        'Measure it again from the underside of the top plate',
        stackLength.place,
      )
    else if (before && at <= before.quantity.si)
      tell(
        `it below support \`${numberBefore}\` at ${written(before)}`,
        'List the supports from the top plate down',
        before.place,
      )
    else if (joint)
      tell(
        `it clear of the flanges of ${joint.words} at \`${joint.at.toFixed(3)} m\``,
        `Measure both again; the bolts of a stack joint are ${bolt?.kind === 'known' ? `${bolt.figure} ${bolt.unit}` : 'not known'}`,
        joint.cause,
      )
    before = support
    numberBefore = number
  }
}

function written({figure, unit}: KnownDatum<'length'>): string {
  return `\`${figure} ${unit}\``
}

/** Joints from the top plate down, as far as the lengths above them are known; the last one is that of the motor. */
function jointsOf({stackSections, stackLength}: Position): readonly JointPlace[] {
  const joints: JointPlace[] = [{words: 'joint `1`', at: 0}]
  for (const {number, length, place} of stackSections.slice(0, -1)) {
    const last = joints.at(-1)
    if (length.kind === 'not-known' || !last) break
    joints.push({words: `joint \`${number + 1}\``, at: last.at + length.quantity.si, cause: place})
  }
  if (stackLength?.kind === 'known')
    joints.push({words: 'the joint to the motor', at: stackLength.quantity.si, cause: stackLength.place})
  return joints
}
