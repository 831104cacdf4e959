import type { Quantity } from './quantity.ts'

/** A header word, with what makes it something else. */
export interface HeaderWords {
  readonly quantity: Quantity
  readonly words: RegExp
  readonly not?: RegExp
}

const words = (list: string): RegExp =>
  new RegExp(String.raw`(^|\s)(${list.replace(/\s*\|\s*/g, '|')})(\s|$)`)

/**
 * Header words of the trade, in English and the common abbreviations and words of German, French, Spanish, Italian,
 * Portuguese and Dutch, lower case, accents off, blanks between words. The first that fits counts, so the narrower
 * ones stand first.
 */
export const HEADER_WORDS: readonly HeaderWords[] = [
  { quantity: 'ignore', words: words('source|uncert|uncertainty|flag|qc|quality|illum|lum|etr|etrn|extraterrestrial|clear ?sky|gust|gusts|boe|spitze|rafale|racha|raffica|qn 3|qn') },
  { quantity: 'dewPoint', words: words('dew ?points?|dew ?pt|dew ?point temp(erature)?|dew|dewpt|td|t ?dew|tdew|t2mdew|dwpt|taupunkt|taupunktstemperatur|(point de )?rosee|(punto de )?rocio|(punto di )?rugiada|(ponto de )?orvalho|dauwpunt|dpt') },
  { quantity: 'relativeHumidity', words: words('rh|rh ?2m?|r ?hum|rel hum|relative humidity|humidity|humid|hum|hr|hrel|ur|rf|(rel(ative)? )?(luft)?feucht(e|igkeit)|humidite|humedad|umidita|umidade|(relatieve )?vochtigheid'), not: words('specific|absolute|spezifische|mixing') },
  { quantity: 'windDirection', words: words('wd|wd ?10m?|w ?dir|wind ?dir|wind ?direction|wind ?richtung|windrichting|direction|direccion|direzione|direcao|dir|dd ?10|dd') },
  { quantity: 'windSpeed', words: words('ws|ws ?10m?|w ?spd|wind ?spd|wind ?speed|wind ?velocity|wind|vwind|windgeschwindigkeit|windsnelheid|vent|viento|vento|(vitesse|velocidad|velocita|velocidade)( .*)?|ff ?10|ff|u10'), not: words('max|maximum|chill') },
  { quantity: 'skyLongwave', words: words('lw ?(dn|d|down|dwn|in)?|long ?wave( .*)?|dw ir|ir h|ir|lwdown|rlds|ldr|ildr|ild|infrared( .*)?|infrarouge|infrarrojo|infrarossa|gegenstrahlung|atmosphaerische gegenstrahlung|thermal radiation|allsky sfc lw dwn|strd|a ?strahl.*'), not: words('up|uw|net|out|upward|outgoing|upwelling') },
  { quantity: 'directNormal', words: words('dni|bni|gb n|direct ?n|direct normal|beam normal|direct n|direktnormal.*|dnr|allsky sfc sw dni|direct normal irradiance|normale directe|normal directa') },
  { quantity: 'directHorizontal', words: words('bhi|direct horizontal|beam horizontal|direct radiation|direct|direktstrahlung|gb h') },
  { quantity: 'diffuseHorizontal', words: words('dhi|dif|diff|diffuse?|diffuse?( .*)|difusa|diffusa|gd h|himmelsstrahlung|allsky sfc sw diff|difhi') },
  { quantity: 'globalHorizontal', words: words('ghi|g h|glo|global|global(e)?( .*)|globalstrahlung|globaal|short ?wave( .*)?|sw|sw ?(dn|d|down|dwn|in)|dw solar|solar|solar rad.*|solar irr.*|rsds|swdown|rayonnement( .*)?|radiacion( .*)?|radiazione( .*)?|radiacao( .*)?|irradiance|irradiation|srad|allsky sfc sw dwn'), not: words('up|uw|net|out|upward|outgoing|reflected|uv|par|long ?wave|tilt(ed)?') },
  { quantity: 'opaqueCloud', words: words('opq cld|opaque( .*)?|opq') },
  { quantity: 'totalCloud', words: words('tot ?cld|total cloud|cloud ?cover|cloudiness|cloud|clouds|cloud amt|tcc|cld|bedeckung(sgrad)?|bewoelkung|bewolkung|nebulosite|nubosidad|nuvolosita|nebulosidade|bewolking|octas|oktas'), not: words('type|height|base|ceiling|low|mid|high') },
  { quantity: 'pressure', words: words('pressure|press|pres|baro|barometer|barometric|surface pressure|station pressure|luftdruck|druck|pression|presion|pressione|pressao|luchtdruk|ps|sp|p|patm|p atm|bp'), not: words('sea|slp|msl|qnh|qff|vapou?r|nn|nmm') },
  { quantity: 'latitude', words: words('lat|latitude|breite') },
  { quantity: 'longitude', words: words('lon|long|longitude|laenge') },
  { quantity: 'airTemp', words: words('t|ta|t ?air|tair|t ?2m?|temp|temperature|air ?temp|air temperature|(outdoor|outside|ambient|exterior)( temp(erature)?)?|dry ?bulb|dry bulb temp(erature)?|tdb|db|lufttemp(eratur)?|aussentemp(eratur)?|temperatur|temperatura|temperature( .*)|temperatuur|luchttemperatuur|tas|tt ?10|tt|t ?amb|tamb|tmed|temp out'), not: words('soil|wet|surface|ground|boden|dew|max|min|sea|water|inside|indoor|room|panel|skin|sky|case|dome|tank|feels|apparent|wind chill') },
  { quantity: 'hourOfYear', words: words('hoy|hour of (the )?year|h of y') },
  { quantity: 'dayOfYear', words: words('doy|j ?day|jd|day of (the )?year|julian( day)?|yday|tag des jahres') },
  { quantity: 'epoch', words: words('epoch|unix|unix ?time|timestamp|dt|time') },
  { quantity: 'stampNumber', words: words('yyyymmdd.*|mess datum|datetime|date|datum|timestamp|yyyymmddhh') },
  { quantity: 'year', words: words('year|yyyy|yr|jahr|annee|an|ano|anno|jaar') },
  { quantity: 'month', words: words('month|mon|mo|mm|monat|mois|mes|mese|maand') },
  { quantity: 'day', words: words('day|dy|dd|tag|jour|dia|giorno|dag|mday') },
  { quantity: 'hour', words: words('hour|hr|hh|h|stunde|std|heure|hora|ora|uur|time|uhrzeit|hhmm') },
  { quantity: 'minute', words: words('minute|min|mi|minuten|minuto') },
] // prettier-ignore

/** The words of a header as the table above has them: unit brackets off, accents off, camel case and marks split. */
export function plainWords(header: string): string {
  return header
    .replace(/[([{].*?[)\]}]/g, (bracket) => (/^[([{][hn][)\]}]$/i.test(bracket) ? ` ${bracket[1]}` : ' '))
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/ß/g, 'ss')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
}
