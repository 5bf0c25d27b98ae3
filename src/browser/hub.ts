import type {HubAnswer, HubRequest} from '../browser-contract/page-contract.ts'

/** The hidden memory frame: every page of the folder asks the same file, so that one store serves them all. */
addEventListener('message', (event) => {
  const data: unknown = event.data
  if (event.source !== parent || !isRequest(data)) return
  parent.postMessage(answer(data), '*')
})

function answer(request: HubRequest): HubAnswer {
  try {
    if (request.ask === 'write') localStorage.setItem(request.key, request.value)
    return {version: 1, id: request.id, value: localStorage.getItem(request.key) ?? undefined, kept: true}
  } catch {
    return {version: 1, id: request.id, value: undefined, kept: false}
  }
}

function isRequest(data: unknown): data is HubRequest {
  return (
    typeof data === 'object' &&
    data !== null &&
    'version' in data &&
    data.version === 1 &&
    'ask' in data &&
    'key' in data
  )
}
