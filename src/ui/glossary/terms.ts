/** Names of the glossary that are explained where they are met in the help of a field. */
const TERMS =
  /\b(air temperature|dew point|irradiance|sky longwave|sky temperature|infrared window|solar reflectance|emittance|field factor|setpoint|running plan)\b/i

/** A text cut at the first name that the glossary has: before, the name as written, after. Null where there is none. */
export function cutAtTerm(text: string): readonly [string, string, string] | null {
  const found = TERMS.exec(text)
  if (found === null) return null
  const [name] = found
  return [text.slice(0, found.index), name, text.slice(found.index + name.length)]
}
