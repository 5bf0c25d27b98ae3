import type {RuleId} from '../../../src/messages/severities.ts'

/** A sentence that no step may have, and the rule that says so. */
export interface BadSentence {
  readonly text: string
  readonly rule: RuleId
}

/** Forty steps that break a rule of language, each in one way. */
export const badSteps: readonly BadSentence[] = [
  {text: 'The purge supply valve is closed now.', rule: 'no-verbless-step'},
  {text: 'You close the purge supply valve.', rule: 'no-verbless-step'},
  {text: 'Closing of the purge supply valve.', rule: 'no-verbless-step'},
  {text: 'Next close the purge supply valve.', rule: 'no-verbless-step'},
  {text: 'Slowly lower the pump unit on both nuts.', rule: 'no-verbless-step'},
  {text: 'Please read the gauge at the top plate.', rule: 'no-verbless-step'},
  {text: 'Operate the lever of the control valve.', rule: 'no-verbless-step'},
  {text: 'Utilise the plastic pick for the O-ring.', rule: 'no-verbless-step'},
  {text: 'When the pump stands, the valve is closed.', rule: 'no-verbless-step'},
  {text: 'Before the flange opens.', rule: 'no-verbless-step'},
  {text: 'Close the purge supply valve and then open the outlet.', rule: 'no-second-instruction'},
  {text: 'Close the purge supply valve, then vent the hose.', rule: 'no-second-instruction'},
  {text: 'Close the valve. Vent the hose.', rule: 'no-second-instruction'},
  {text: 'Loosen the bolts; take the cover off.', rule: 'no-second-instruction'},
  {text: 'Remove the bolts, take the cover off and clean the groove.', rule: 'no-second-instruction'},
  {text: 'Open the vent, read the gauge and close the vent.', rule: 'no-second-instruction'},
  {text: 'Lift the cover off. The gasket stays on the casing.', rule: 'no-second-instruction'},
  {
    text: 'When the pump stands, close the valve, lock the wheel and hang the tag.',
    rule: 'no-second-instruction',
  },
  {text: 'Close the discharge valve if the level rises.', rule: 'no-late-condition'},
  {text: 'Stop the purge when the outlet is dry.', rule: 'no-late-condition'},
  {text: 'Call the chief engineer if a lip is cut.', rule: 'no-late-condition'},
  {text: 'Renew the seal set when one lip is hard.', rule: 'no-late-condition'},
  {
    text: 'Loosen the bolts of the motor flange one after the other in the order of the figure by half a turn each with the long ring spanner.',
    rule: 'no-long-step',
  },
  {
    text: 'Lower the pump unit slowly and evenly on both lowering bolts until its lower edge stands on the two plastic strips beside the well.',
    rule: 'no-long-step',
  },
  {
    text: 'Measure the bore of the lower wear ring at three places near the outer edge and at three places near the inner edge.',
    rule: 'no-long-step',
  },
  {text: 'Read the gauge, which may show a little pressure.', rule: 'no-hedge'},
  {text: 'Turn the hub, which should move freely.', rule: 'no-hedge'},
  {text: 'Open the vent slowly, as gas might come out.', rule: 'no-hedge'},
  {text: 'Hold the container where liquid could drip.', rule: 'no-hedge'},
  {text: 'Look where oil would run out.', rule: 'no-hedge'},
  {text: "Don't touch the running surface of the sleeve.", rule: 'no-contraction'},
  {text: 'Mark the side that’s towards the bow.', rule: 'no-contraction'},
  {text: 'Hang the tag where it can’t fall.', rule: 'no-contraction'},
  {text: 'Tighten the bolts as required.', rule: 'no-vague-word'},
  {text: 'Clean the groove properly.', rule: 'no-vague-word'},
  {text: 'Drain the hose if necessary.', rule: 'no-vague-word'},
  {text: 'Wait approximately for the usual time.', rule: 'no-vague-word'},
  {text: 'Make sure the valve is closed.', rule: 'no-vague-word'},
  {text: 'Take the boss off the shaft flange.', rule: 'no-second-term'},
  {text: 'Fit a new neck ring into the suction cover.', rule: 'no-second-term'},
]

/** Forty steps as they are wanted; several lie close to a fault. */
export const goodSteps: readonly string[] = [
  'Close the purge supply valve.',
  'Open the vent slowly.',
  'Read the gauge at the top plate.',
  'Loosen each of the VALUE hub bolts by two turns only.',
  'Bend the locking plates flat.',
  'Turn the hub by hand both ways and tick how it turns.',
  'Remove the bolts of the hand hole cover and take the cover off.',
  'Hang the chain hoist above the well and hook the slings.',
  'Lower the unit with both nuts in parallel, three turns each at a time.',
  'Cap the shaft flange, the face of the motor flange and the discharge spigot.',
  'Lay the two plastic strips down the slope of the well.',
  'Wait until gas and pipes have one temperature.',
  'If a lip is cut, renew the seal set.',
  'When the pump stands, close the discharge valve.',
  'Before the flange opens, read the gauge at the top plate.',
  'While the purge runs, watch the container.',
  'Where the tank is coated, lay the rubber mats around the well.',
  'Do not turn the shaft.',
  'Never strike the sleeve.',
  'Measure the bore of the lower wear ring.',
  'Write down the pressure, the temperature and the time.',
  'Tighten the cover bolts in the order shown.',
  'Put the mounting sleeve on and lift the impeller straight up.',
  'Vent the rig to zero and close its shut-off valve.',
  'Count the bolts, the washers and the locking plates.',
  'Choose the test gas by the last and the next cargo and tick it.',
  'Spray blind, rig, gauge cock, purge connections and top plate with leak spray.',
  'Hold the pressure for the full time and touch no valve.',
  'Take the blind out and lay one new gasket in.',
  'Compute the corrected drop.',
  'Enter the tank with a second person, while the attendant stays at the opening.',
  'Plug the scuppers of the working deck.',
  'Look into the impeller from the suction side.',
  'Set the dial indicator on the running surface of the sleeve.',
  'Restore the return valve against the list.',
  'Pull the unit up the slope into the cradle.',
  'Tell the cargo control room that the pump is ready.',
  'Start the pump at the lowest setting of the lever.',
  'Press the seal set evenly onto its seat.',
  'Empty the drip tray into the waste drum.',
]

/** Notes that command. */
export const badNotes: readonly string[] = [
  'Close the valve before the next step.',
  'Do not touch the sleeve.',
  'Never lean over the opening.',
  'Keep the lips clean.',
  'Use both hands for the wheel; wear a glove.',
]

/** Notes that inform, several beginning with a word that is a verb elsewhere. */
export const goodNotes: readonly string[] = [
  'The valve is at the top plate.',
  'Watch: the part goes back and is looked at again at the next opening.',
  'Seal lips that are hard leak within a week.',
  'Oil in the drum goes ashore.',
  'Used locking plates go into the waste drum.',
  'Drain cocks stand open until the end.',
  'Test gas is dry nitrogen where the cargo is flammable.',
  'Stations near the outer edge have the letter a.',
]
