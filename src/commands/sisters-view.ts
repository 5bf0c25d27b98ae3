import {wordsEn} from '../compile/words-en.ts'
import type {ComputedValues} from '../handbook-model/computed.ts'
import type {Content} from '../handbook-model/content.ts'
import type {SistersView} from '../render/render-sisters.ts'
import type {SistersReport} from './sisters-report.ts'
import {itemWords, sistersWords as words} from './sisters-words-en.ts'

/** The page of sister pumps: designs with several pumps first, each thing with its name in words. */
export function sistersView(
  designs: readonly SistersReport[],
  content: Content,
  values: ComputedValues,
): SistersView {
  return {
    words: words.page,
    issuer: content.office.issuer.en,
    demonstration: content.office.demonstration ? words.demonstration : '',
    designs: [...designs]
      .sort((a, b) => Number(b.pumps > 1) - Number(a.pumps > 1))
      .map(({design, title, vessels, pumps, compared, stackLengths, differences}) => ({
        id: design,
        title,
        lead: pumps > 1 ? words.lead(pumps, vessels, differences.length, compared) : words.alone(vessels),
        lengths:
          stackLengths.length > 1 ? stackLengths.map(({text, on}) => `${text} (${on})`).join('; ') : '',
        items: differences.map(({item, sides}) => ({
          id: item,
          title: titleOf(item, content, values),
          sides: sides.map((side) => ({...side, count: words.pumps(side.pumps)})),
        })),
      })),
  }
}

/** What an item is, in the words of the content where it has any. */
function titleOf(item: string, content: Content, values: ComputedValues): string {
  const [group = '', id = '', field = ''] = item.split('.')
  if (group === 'fact' || group === 'ship-fact')
    return content.office.facts.find((fact) => fact.id === id)?.title.en ?? ''
  if (group === 'spare') return content.parts.get(id)?.title.en ?? ''
  if (group === 'interval') return content.jobs.get(id)?.title.en ?? ''
  if (group === 'isolation') {
    const role = Object.entries(wordsEn.roles).find(([name]) => name === id)?.[1] ?? ''
    return field === '' ? role : `${role}, ${itemWords.get(field) ?? field}`
  }
  const titles = [...values.vessels.values()].flatMap((pumps) =>
    [...pumps.values()].flatMap((own) => own.get(item)?.title ?? []),
  )
  return titles[0] ?? itemWords.get(item) ?? ''
}
