import type {RuleId} from './severities.ts'

/** Why a rule exists, and how to live with it. */
export interface RuleReason {
  readonly why: string
  readonly accepted: string
  readonly rejected: string
  readonly mend: string
}

/** Every rule explained; DEVELOPERS.md holds the same words (a test compares). */
export const ruleReasons: Readonly<Record<RuleId, RuleReason>> = {
  'no-missing-content': {
    why: 'The content folder or a file that every handbook needs is not there.',
    accepted: 'a folder with `office.yaml`, `sources.yaml` and at least one vessel',
    rejected: 'an empty folder; no `office.yaml`',
    mend: 'name the folder with `--content`, or write the file',
  },
  'no-unreadable-file': {
    why: 'A listed file or folder cannot be read, so nobody can say what it would have changed.',
    accepted: 'a file that the user may read',
    rejected: 'a file without read permission',
    mend: 'give yourself the right to read it',
  },
  'no-foreign-encoding': {
    why: 'Text that is not UTF-8 prints other letters than the author meant, and a letter that does not print makes two texts differ that read alike, or turns the order of digits.',
    accepted: 'a file saved as UTF-8',
    rejected:
      'a file saved as Latin-1; a control character, a mark of writing direction or a blank of no width, as it is or as an escape',
    mend: 'save it as UTF-8; write the word again',
  },
  'no-oversized-file': {
    why: 'A file over 1 MB is no content file and slows every build.',
    accepted: 'a file of up to 1 MB',
    rejected: 'a 2 MB YAML file',
    mend: 'split it',
  },
  'no-yaml-fault': {
    why: 'The file is not well-formed YAML.',
    accepted: 'indentation by two blanks',
    rejected: 'a tab as indentation',
    mend: 'indent with two blanks; put texts with `: ` in quotes',
  },
  'no-yaml-alias': {
    why: 'Anchors and aliases can grow a few lines into gigabytes and hide where a value stands.',
    accepted: 'a text in quotes that begins with `*`',
    rejected: '`&a`, `*a`',
    mend: 'write the value out or refer to it by id',
  },
  'no-csv-fault': {
    why: 'A row does not fit its header.',
    accepted: 'a cell with a comma in quotes',
    rejected: 'a row with one cell too many',
    mend: 'give each row one cell a column',
  },
  'no-markdown-fault': {
    why: 'A procedure holds something that the language does not know, or lacks its title or front matter.',
    accepted: 'a step with notes, plates and readings below it',
    rejected: 'a table inside a step',
    mend: 'use notes, lists and directives',
  },
  'no-stray-file': {
    why: 'A file at a place that the content model does not know would silently be left out.',
    accepted: '`tables/threads.csv`',
    rejected: '`content/notes.docx`',
    mend: 'move it out of the content',
  },
  'no-idle-difference': {
    why: 'A written reason why a pump differs from its sisters would hide the next difference when it stands beside something that is the same.',
    accepted:
      '`differences: [{item: fact.backstop, reason: exchanged at a docking}]` on a pump whose sisters have another backstop',
    rejected: 'the same on a pump whose sisters have the same',
    mend: 'take it out; `sheetanchor sisters` lists what differs',
  },
  'no-broken-stack': {
    why: 'The length of the stack goes into volumes, pressures and times: its sections, numbered from deck, make it to the millimetre for each. Its supports follow each other from the top plate down, end above its foot and stand clear of the flanges of its joints.',
    accepted:
      'three sections of 2.000 m, 2.000 m and 1.400 m in a stack of 5.4 m, with supports at 2.50 m and 4.70 m',
    rejected:
      'the same in a stack of 5.44 m; sections 1 and 3 without 2; a support at 4.02 m, at 5.60 m, or at 2.50 m behind 4.70 m',
    mend: 'measure again, list every section, list supports from the top plate down',
  },
  'no-falling-hours': {
    why: 'Hours that step back are a slip of the pen or those of another component, and its service comes too late: hours of one component never fall unless its counter was exchanged.',
    accepted: '4180 hours of motor `M-1` a month after 4120; `12` hours with `0` under `new-counter-from`',
    rejected: '4020 hours of motor `M-1` a month after 4120',
    mend: 'read counter and nameplate again, or write what the new counter began with',
  },
  'no-unmeasured-renewal': {
    why: 'A ring that is renewed without its reading as found loses the last and best reading of its life: the line through the ring before ends too early.',
    accepted: '`as-found` and `as-left` of one ring on one day, `yes` under `renewed` at the second',
    rejected: '`yes` at a reading as left alone; `yes` at a reading as found',
    mend: 'add the clearance that the old ring was found with, or leave the renewal to the note',
  },
  'no-damaged-ledger': {
    why: 'A ledger is written by the tool and never edited; a damaged one cannot say what is issued.',
    accepted: 'a ledger as the tool wrote it',
    rejected:
      'a ledger with a changed field, of another vessel than its folder, or with a check code that is not of its page',
    mend: 'take it again from the commit of its issue',
  },
  'no-unknown-key': {
    why: 'A mistyped key is a lost value, and a text in a language that the office does not list is never read.',
    accepted: '`serial: A-2001`',
    rejected: '`serail: 12`; `nl:` with `languages: [en]`; a `reason` beside a value that is known',
    mend: 'use the named nearest key; list the language',
  },
  'no-missing-key': {
    why: 'A field that the shape needs is not there.',
    accepted: 'a ring with `renewal: 1.20 mm diametral`',
    rejected: 'a ring without `renewal`',
    mend: 'add it; write `not known` with a reason where nobody knows',
  },
  'no-wrong-shape': {
    why: 'Something stands where another kind of thing is expected.',
    accepted: '`count: 8`',
    rejected: 'a list where a text is expected',
    mend: 'follow the shape named in the message',
  },
  'no-bad-quantity': {
    why: 'A number without a proper unit, negative where that cannot be, or not finite.',
    accepted: '`3 bar(g)`, `0.30 mm diametral`',
    rejected: '`3 bars`, `-0.3 mm`, `NaN`',
    mend: 'write number, blank, unit',
  },
  'no-bad-id': {
    why: 'Ids become file names and addresses on every operating system.',
    accepted: '`hub-bolts`',
    rejected: '`a/b`, `CON`, `../x`',
    mend: 'small letters, digits and hyphens',
  },
  'no-bad-date': {
    why: 'A day that does not exist cannot be compared, and a year before 1900 or after 2199 is a slip of the pen.',
    accepted: '`2031-02-14`',
    rejected: '`2031-02-30`; `0211-02-14`',
    mend: 'write `2031-02-14`',
  },
  'no-duplicate-id': {
    why: 'Two things under one id: a reference would mean either.',
    accepted: 'joints `hub-bolts` and `cover-bolts`',
    rejected: 'two joints `hub-bolts`',
    mend: 'rename one',
  },
  'no-second-serial': {
    why: 'A nameplate tells one pump from another, and the history of a component belongs to one: no two pumps, heads, motors, sleeves or stacks of the fleet carry one serial number.',
    accepted: 'motor `M-1` in one pump, `M-2` in the next; pump `7` with motor `7`',
    rejected: 'motor `M-1` in two pumps, of one vessel or of two',
    mend: 'read both nameplates again',
  },
  'no-retired-id': {
    why: 'Records of old revisions still mean the old step.',
    accepted: 'a new id for a new step',
    rejected: 'an id from `retired-ids` used again',
    mend: 'choose a new id',
  },
  'no-undefined-reference': {
    why: 'A reference that leads nowhere, on any pump on which it is printed.',
    accepted:
      '`:value{ref=hub-bolts.torque}` with a joint `hub-bolts` in every design aboard, or under a `when` that leaves the other designs out',
    rejected:
      '`:value{ref=hub-bolt.torque}`; a value that one of the designs lacks; `:part[cloth]{ref=cloth}` of a part without a balloon, or with one that the parts list of a pump has not',
    mend: 'use the named nearest id; add it to the design, or a condition',
  },
  'no-unlisted-protection': {
    why: 'The mate looks in the locker for what the sheet says: where the office lists `protections`, a cargo asks for no other word.',
    accepted: '`"chemical gloves, goggles"` with both under `protections:` of office.yaml',
    rejected: '`"chemical glove, goggles"`',
    mend: 'use the named nearest word, or add it to office.yaml',
  },
  'no-reference-loop': {
    why: 'A procedure that sends the reader to itself.',
    accepted: '`:procedure{ref=restoration}` in isolation',
    rejected: '`:procedure{ref=isolation}` in isolation',
    mend: 'name the step or the procedure that is meant',
  },
  'no-empty-vessel': {
    why: 'A vessel without a pump has no handbook.',
    accepted: 'a vessel with one position',
    rejected: '`positions: []`',
    mend: 'list the positions',
  },
  'no-impossible-value': {
    why: 'A value that cannot exist.',
    accepted: 'an outer pipe larger than the inner one',
    rejected: 'an outer pipe smaller than the inner one; two rows of a table that serve one diameter',
    mend: 'read the drawing or the source again',
  },
  'no-implausible-value': {
    why: 'A value outside the usual window; the build goes on.',
    accepted: 'a stack length of 14.0 m',
    rejected: 'a stack length of 40 m',
    mend: 'read the drawing again',
  },
  'no-contradicting-clearance': {
    why: 'Where a drawing gives a new ring less clearance than the table of running clearances prints for its diameter, one of the two is wrong, or the material of the ring allows it: then the ring says so, and the message stays as information.',
    accepted: '`minimum-new: 0.52 mm diametral` at 210 mm, where the table prints 0.51 mm',
    rejected: '0.50 mm there without `below-table:`; `below-table:` beside the 0.52 mm',
    mend: 'read drawing and table again, or write the reason under `below-table:`',
  },
  'no-unauthorised-signature': {
    why: 'A signature counts only from a person whom the office has given the authority.',
    accepted: '`role: reviewer` by a person who may `review`',
    rejected: '`role: approver` by a person who may only `write`',
    mend: 'let a person with the authority sign, or give it in office.yaml',
  },
  'no-own-approval': {
    why: 'Nobody finds his own mistake: author, reviewer and approver of a source are three people.',
    accepted: 'three signatures by three people',
    rejected: 'author and approver the same person',
    mend: 'let another person sign',
  },
  'no-unapproved-source': {
    why: 'An issue goes to sea: each source behind its pages is signed by author, reviewer and approver as it reads now.',
    accepted: 'a source with three signatures on its hash',
    rejected: 'a source that nobody approved; one that changed by one letter after its approval',
    mend: 'read it and sign it with `sheetanchor approve`',
  },
  'no-unexplained-change': {
    why: 'A new revision of a page says why it is there.',
    accepted: 'changes.yaml with a reason for the source as it reads now',
    rejected: 'an issue in which a torque moved and nobody wrote why',
    mend: 'add the source, its hash, its class and the reason to changes.yaml',
  },
  'no-disguised-change': {
    why: 'A change that is called editorial gets no bar and no new revision: it moves wording alone, and a reviewer has seen it.',
    accepted: '`class: editorial` with `reviewed-by` on a corrected spelling',
    rejected:
      '`class: editorial` while a value, a limit or the order of steps moved; one without `reviewed-by`',
    mend: 'call it technical, or let a person who may review confirm it',
  },
  'no-lost-text': {
    why: "What changed since the last revision is told from the text of that revision, kept in the ledger's folder.",
    accepted: '`issues/<vessel>/texts/` as the tool wrote it',
    rejected: 'a ledger whose texts were not committed with it',
    mend: 'take the texts again from the commit of the issue',
  },
  'no-unplaced-trial': {
    why: 'A trial on board counts for the design on which it was made, and is told by a role: names of persons stay out.',
    accepted:
      '`{procedure: wear-rings, vessel: vessel-a, position: 4s, date: 2031-01-05, role: second engineer, result: done as written}`',
    rejected: 'a trial of a procedure on a pump without `position`; a role that no procedure names',
    mend: 'name the pump, and a role of `performed-by` or `supervised-by`',
  },
  'no-reused-number': {
    why: 'A number of an urgent revision is said over the radio and stands on paper: it means one text for ever.',
    accepted: '`T-08` for what comes after `T-07`',
    rejected: 'a second `T-07`; another text, or the same one again, under a number that was issued',
    mend: 'take the next number of the office, and supersede or end the earlier one',
  },
  'no-untimely-urgent': {
    why: 'An urgent revision counts from a day to a day: one that is over would warn of what nobody answers for any more, and its figures would print as those of today.',
    accepted: 'an issue between `valid-from` and `valid-to`',
    rejected:
      'an issue after `valid-to`, or before `valid-from`; a last day before the first; superseding one whose file is still there',
    mend: 'take it into the page and end it in changes.yaml, or write another with a later day',
  },
  'no-idle-urgent': {
    why: 'The office believes that the ships are warned: an urgent revision stands on a page.',
    accepted: '`when: backstop = fitted` with such a pump on one of its vessels',
    rejected: 'the same where every backstop is `none`; a step that stands on none of its pumps',
    mend: 'correct vessels, positions, condition or step',
  },
  'no-half-replacement': {
    why: 'A page that shows a new torque beside the passes of the old one is worse than the old page: what is computed from a replaced value is replaced too, in the unit of the value.',
    accepted: '`hub-bolts.torque` and `hub-bolts.passes` both under `values`',
    rejected: '`hub-bolts.torque` alone; `55 mm` in place of a torque',
    mend: 'add the value that the message names; write a figure of the same kind',
  },
  'no-ending-urgent': {
    why: 'An urgent revision ends on a day; for information: within thirty days of the day that dates are compared with, or when that day is past it.',
    accepted: '`valid-to: 2019-08-01` compared with 2019-05-14',
    rejected: '`valid-to: 2019-06-01` compared with 2019-05-14',
    mend: 'take it into the page, or write another with a later day',
  },
  'no-raw-html': {
    why: 'HTML would bypass escaping, paper and the technical text.',
    accepted: '`**stop**`',
    rejected: '`<b>stop</b>`',
    mend: 'write Markdown',
  },
  'no-unknown-directive': {
    why: 'A mistyped directive or attribute would silently be lost.',
    accepted: '`::caution{ref=fall}`',
    rejected: '`::cauton`',
    mend: 'use the named nearest word',
  },
  'no-misplaced-directive': {
    why: 'A directive at a place where it has no meaning.',
    accepted: 'a hold point between two steps',
    rejected: 'a hold point inside a step',
    mend: 'move it as the message says',
  },
  'no-unmarked-step': {
    why: 'A step without an id cannot be referred to, recorded or compared.',
    accepted: '`1. :step{#open-cover} Open the cover.`',
    rejected: 'a list item without `:step{#id}`',
    mend: 'begin it with the mark',
  },
  'no-scope-mix': {
    why: 'A procedure of the whole ship or of a design has one page: a figure of one pump on it would be read on all.',
    accepted: '`scope: vessel` with `:value{ref=house.isolation-recheck}`',
    rejected: '`scope: vessel` with `:value{ref=cofferdam.volume}` or `::isolate`',
    mend: 'write `scope: position`, or take it out',
  },
  'no-typed-number': {
    why: 'A number in prose is in no table, has no source and moves with nothing.',
    accepted: '`Tighten to :value{ref=hub-bolts.torque}`, `the two nuts`',
    rejected: '`Tighten to 48 N·m`',
    mend: 'state it as a value and refer to it',
  },
  'no-bad-condition': {
    why: 'A condition that cannot be parsed cannot be decided.',
    accepted: '`backstop = fitted and cargo-seal in (double-lip, single-lip)`',
    rejected: '`backstop == fitted`',
    mend: 'follow the grammar above',
  },
  'no-unknown-fact': {
    why: 'A fact or value that is not declared, or a condition over a fact that nobody knows on some pump with no identify step before it.',
    accepted: '`when="backstop = fitted"` behind `::identify{fact=backstop}` and a hold point',
    rejected: '`when="backstop = fited"`',
    mend: 'use the named nearest word; add `::identify` and a hold point',
  },
  'no-uncautioned-hazard': {
    why: 'A step whose action class brings a hazard has no caution of that class.',
    accepted: '`action=lift` below a caution of the suspended load',
    rejected: '`action=lift` with no caution of the suspended load',
    mend: 'add the caution that the message names',
  },
  'no-late-caution': {
    why: 'A caution after the instruction is read too late.',
    accepted: '`::caution` on the line above the step',
    rejected: '`::caution` inside the step',
    mend: 'move it above the step',
  },
  'no-incomplete-caution': {
    why: 'A caution names hazard, consequence and advice that starts with a verb, and its word fits the harm.',
    accepted: '`avoid: [Stand clear of the load.]`',
    rejected: '`Be careful`',
    mend: 'begin with a verb of the list; change the word',
  },
  'no-unrestored-isolation': {
    why: 'Every isolation is half a sentence: what is closed, blinded or taken off comes back in the same job.',
    accepted: '`::isolate{role=pressure}` and, later in the job, `::restore{role=pressure}`',
    rejected: 'a job without `::restore{role=pressure}`',
    mend: 'add the restore step',
  },
  'no-unmatched-restoration': {
    why: 'Something is restored that the job never isolated.',
    accepted: 'the same pair',
    rejected: 'a lone `::restore`',
    mend: 'add the isolation or remove the line',
  },
  'no-missing-isolation-point': {
    why: 'A procedure isolates a role for which a pump has neither a point nor a reason.',
    accepted: '`heating: {none: this tank has no coils}`',
    rejected: 'a position without `heating`',
    mend: 'add the point or `{none: reason}`',
  },
  'no-unlimited-reading': {
    why: 'A reading without unit, stations or a limit is written down and judged by nobody.',
    accepted: '`::reading{… limits=hub-run-out}`',
    rejected: '`::reading` with no `limits` that feeds no `::derived`',
    mend: 'name the limit',
  },
  'no-unread-instrument': {
    why: 'The instrument of a reading does not say what it can show.',
    accepted: '`instrument: {graduation: 0.01 mm, uncertainty: 0.01 mm}`',
    rejected: 'a tool without `instrument`',
    mend: 'state graduation and uncertainty',
  },
  'no-unwitnessed-hold': {
    why: 'A hold point needs two signatures of two roles; a procedure on a pump begins with the nameplate.',
    accepted: '`signed-by="second engineer" second-by="chief engineer"`',
    rejected: '`second-by` missing',
    mend: 'name both roles',
  },
  'no-unheld-work': {
    why: 'Nobody enters, opens, lifts or starts before two people have signed for it: what a job does demands its kind of hold point, under no other condition than the work.',
    accepted:
      '`action=enter` behind `::hold-point{#entry-readings … kind=entry}` of an earlier procedure of the job',
    rejected: 'the same without `kind=entry`',
    mend: 'add the hold point, or its kind where it is there',
  },
  'no-as-left-alone': {
    why: 'As-left without as-found gives no trend.',
    accepted: '`ring-found` before `ring-left`',
    rejected: '`ring-left` without `ring-found`',
    mend: 'take the as-found reading first',
  },
  'no-unit-mix': {
    why: 'A reading and its limit, or a derived reading and its sources, are of different kinds.',
    accepted: 'a reading in `mm diametral` with a limit in `mm diametral`',
    rejected: '`mm radial` against `mm diametral`',
    mend: 'bring both to one kind',
  },
  'no-undisposed-drain': {
    why: 'What is drained goes somewhere.',
    accepted: '`action=drain`, later `action=dispose`',
    rejected: 'a step with `action=drain` and none with `action=dispose` at it or behind it',
    mend: 'say where the liquid goes',
  },
  'no-massless-lift': {
    why: 'Gear is chosen by the mass, before the load is in the air.',
    accepted: '`::value{ref=unit-lift.mass}` at the first lift',
    rejected: 'a section whose first step with `action=lift` shows no mass',
    mend: '`::value{ref=mass.…}` or a value of a lift',
  },
  'no-file-reference': {
    why: 'Files are renamed and pages move; ids are checked with every build.',
    accepted: '`:procedure[the isolation]{ref=isolation}`',
    rejected: '`see isolation.html`',
    mend: '`:procedure[…]{ref=…}`',
  },
  'no-uncovered-failure': {
    why: 'What is not in the matrix of parts and failures is what the crew meets at night with nothing to read.',
    accepted: '`procedures: [wear-rings]`, or `reason: exchanged by a yard`',
    rejected:
      'a row of failures.yaml with neither `procedures` nor `reason`, or whose procedures are for other pumps than have the part; a fitted part, one with a balloon or that a design names for a seal or an O-ring, without a row',
    mend: 'name the procedure, or write why there is none',
  },
  'no-long-procedure': {
    why: 'A procedure of more than thirty steps is two jobs. Steps of which a pump has one or the other count once.',
    accepted: 'thirty steps',
    rejected: 'thirty-one steps',
    mend: 'split it; a job joins the parts',
  },
  'no-long-step': {
    why: 'A step is read once, with both hands in the pump.',
    accepted: 'twenty words',
    rejected: 'more than twenty words',
    mend: 'split it, or move information into a note',
  },
  'no-second-instruction': {
    why: 'The second instruction of a step is the one that is forgotten.',
    accepted: '`Take the cover off and clean it.`',
    rejected: '`Close the valve and then vent the hose`; a second sentence; three verbs',
    mend: 'a step for each. Two verbs on one thing, `take the cover off and clean it`, pass',
  },
  'no-verbless-step': {
    why: 'A step says what is done.',
    accepted: '`Close the valve.`, `When the pump stands, close the valve.`',
    rejected: '`The valve is closed`',
    mend: 'begin with a verb of `src/check/language/approved-verbs.ts`, behind a condition and a comma where there is one',
  },
  'no-late-condition': {
    why: 'A reader who acts word by word has acted before the condition.',
    accepted: '`If the level rises, close the valve.`',
    rejected: '`Close the valve if the level rises`',
    mend: '`If the level rises, close the valve`',
  },
  'no-instruction-in-note': {
    why: 'What stands in a note is not ticked and not done.',
    accepted: '`The lips are clean and dry.`',
    rejected: '`Keep the lips clean.` below a step',
    mend: 'make it a step, or say what is so',
  },
  'no-long-sentence': {
    why: 'A description of more than twenty-five words is read twice.',
    accepted: 'a sentence of up to twenty-five words',
    rejected: 'a sentence of twenty-six words',
    mend: 'split it',
  },
  'no-hedge': {
    why: '`May`, `might`, `should`, `could` leave the decision to the wrong person.',
    accepted: '`Oil comes out.`',
    rejected: '`oil might come out`',
    mend: 'say what is so, or what is done and when',
  },
  'no-contraction': {
    why: 'Two words in one are a trap in a second language.',
    accepted: '`do not`',
    rejected: "`don't`",
    mend: 'write both words',
  },
  'no-vague-word': {
    why: '`As required`, `properly`, `make sure` without a measure say nothing that can be done wrong.',
    accepted: '`Make sure that the gauge shows zero.` with a reading below it',
    rejected: '`Tighten as required.`',
    mend: 'a condition, a measure or a limit; `make sure` stands where the step has a reading, value, choice or signature',
  },
  'no-second-term': {
    why: 'One thing has one word.',
    accepted: 'the term of terms.yaml',
    rejected: 'a word under `not-used` of terms.yaml',
    mend: 'the term',
  },
  'no-idle-exception': {
    why: 'A rule of language is not held against a line that `exceptions.yaml` names (`rule file words reason reviewed-by`); the message stays as information with the reason. An exception that covers nothing would hide the next mistake.',
    accepted: 'an exception whose words stand in a line that breaks the rule',
    rejected: 'an exception whose line was mended',
    mend: 'take it out',
  },
  'no-dry-torque': {
    why: 'A torque without its lubrication state is a hazard: the dry torque breaks a lubricated bolt.',
    accepted: '`lubrication: assembly-paste`',
    rejected: 'a joint without `lubrication`',
    mend: 'name the row of tables/friction.csv',
  },
  'no-missing-table-row': {
    why: 'A table is read by exact row and never beyond its ends.',
    accepted: '`M12` with its row in tables/threads.csv',
    rejected: '`M13`',
    mend: 'add the row with its source or choose another fastener',
  },
  'no-overstressed-bolt': {
    why: 'Tension and torsion together exceed the stated utilisation.',
    accepted: 'a combined stress up to the utilisation',
    rejected: 'a result above the utilisation',
    mend: 'lower it or change the fastener',
  },
  'no-uncomputable-value': {
    why: 'Something is not known, so this value prints NOT KNOWN; for information.',
    accepted: 'every input known',
    rejected: 'a stack length not known',
    mend: 'measure and report',
  },
  'no-wrench-aboard': {
    why: 'A torque that no wrench aboard can set is not set: the range is from 20 % to 100 % of the most of the wrench, where its accuracy is stated.',
    accepted: '61 N·m with a wrench of 40 to 200 N·m that the procedure lists and the vessel has',
    rejected: 'the same with a wrench of 5 to 50 N·m; with none aboard',
    mend: 'list a wrench that covers it, and put it aboard',
  },
  'no-aged-rubber': {
    why: 'A ring that has lain too long leaks from its first day: it is within the first storage period of its rubber on the day that dates are compared with.',
    accepted: '`cured: 2015-03-01` on a ring of FKM, compared with 2019',
    rejected: 'the same compared with 2026; a cure date on a part without `rubber:`',
    mend: 'send new ones; state the rubber in parts.yaml by its letters of ISO 1629',
  },
  'no-past-calibration': {
    why: 'A reading is worth as much as the last calibration of the tool: on the day that dates are compared with it is valid by its certificate, or by the interval of the designs; for information.',
    accepted: 'a gauge calibrated on 2018-05-14 with an interval of 12 months, compared with 2019-05-14',
    rejected: 'the same calibrated on 2018-05-13; `valid-to` before 2019-05-14',
    mend: 'send another tool, or have it calibrated and add the line',
  },
  'no-contradicting-source': {
    why: 'Two papers that state one value are read again where they differ by more than 5 %: the value of the design governs, and the other paper is named beside it.',
    accepted:
      '`also-stated: [{value: mass.head, says: 180 kg}]` on a mass of 186 kg, or a larger difference with a `reason`',
    rejected: '`says: 170 kg` without `reason`; a `reason` beside the 180 kg',
    mend: 'read both papers again, or write why they differ',
  },
  'no-idle-design': {
    why: 'A data sheet of no pump is read as if it counted, or its pump was forgotten in the vessel file.',
    accepted:
      '`design: design-b` on a pump of some vessel; `kept-for: pumps of a sister vessel from 2031 on` on a design of none',
    rejected: 'a design of no pump without `kept-for`; `kept-for` on a design that a pump has',
    mend: 'take the sheet out, name it at its pump, or write why it is kept',
  },
  'no-idle-source': {
    why: 'A paper on which nothing stands is kept up to date for nobody, or the value that should stand on it stands on another.',
    accepted:
      'a source that a value, calculation, caution, table or record names, or `kept-for: judgement of old purge records`',
    rejected: 'a source that nothing names without `kept-for`; `kept-for` on one that a value stands on',
    mend: 'take the source out, name it at what stands on it, or write why it is kept',
  },
  'no-superseded-source': {
    why: 'Values stand on a source that has been superseded.',
    accepted: 'a value from a current source',
    rejected: 'a value from a revoked circular',
    mend: 'move them to the current source or accept it in writing',
  },
  'no-name-clash': {
    why: 'Two files would be one on a disk that ignores capitals, or a name is not portable.',
    accepted: 'two ids that differ by more than capitals',
    rejected: 'two ids that differ by capitals',
    mend: 'rename',
  },
  'no-long-path': {
    why: 'A long path breaks when the folder is copied deep.',
    accepted: 'a path of up to 100 characters',
    rejected: 'over 100 characters',
    mend: 'shorten the id',
  },
  'no-heavy-page': {
    why: 'A heavy page is slow on an old PC.',
    accepted: 'a page of up to 150 kB',
    rejected: 'a page over 150 kB',
    mend: 'split it',
  },
}
