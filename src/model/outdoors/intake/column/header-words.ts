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
 * Portuguese, Dutch, Korean, Japanese and Chinese, lower case, accents off, blanks between words. The first that fits counts, so the narrower
 * ones come first.
 */
export const HEADER_WORDS: readonly HeaderWords[] = [
  { quantity: 'ignore', words: words('batt(ery)?|batt ?v.*|volts?|voltage|logger.*|p ?temp( .*)?|panel temp.*|record( .*)?|rn|id|stn id|stn|stations? ?id|indoor.*|inside.*|in (temp|hum)|gust.*|ustar|co2( .*)?|h2o( .*)?|albedo.*|visibility.*|vv|precip.*|rain.*|snow.*|eto|et0|uv.*|par|azimuth|heat index|humidex|hmdx|wind chill|feels.*|source|uncert|uncertainty|flag|qc|quality|illum|lum|etr|etrn|extraterrestrial|clear ?sky|gust|gusts|boe|spitze|rafale|racha|raffica|qn 3|qn') },
  { quantity: 'ignore', words: words('station( id| nr| no| number| name)?'), not: words('pressure|press|pres|temp|temperature|air|humidity|wind|speed') },
  { quantity: 'dewPoint', words: words('dew ?points?|dew ?pt|dew ?point temp(erature)?|dew|dewpt|td|t ?dew|tdew|t2mdew|dwpt|taupunkt|taupunktstemperatur|(point de )?rosee|(punto de )?rocio|(punto di )?rugiada|(ponto de )?orvalho|dauwpunt|dpt|이슬점온도|露点温度|露点|露點溫度') },
  { quantity: 'wetBulb', words: words('wet ?bulb( temp(erature)?)?|twb|t ?wet|feuchttemperatur|bulbe humide|bulbo humedo|습구온도|湿球温度'), not: words('max|min|globe') },
  { quantity: 'vapourDeficit', words: words('vpd( f)?|vp ?def|(vapou?r )?(pressure )?deficit|saturation deficit|sattigungsdefizit|飽差|饱和差'), not: words('qc') },
  { quantity: 'vapourPressure', words: words('(actual )?vap(ou?r)? ?pres(s(ure)?)?( avg| average| mean)?|vp|vp ?act|e ?act|ea|dampfdruck|tension de vapeur|presion de vapor|증기압|蒸気圧|水汽压|水蒸気圧'), not: words('sat|saturation|saturated|max|deficit|def') },
  { quantity: 'specificHumidity', words: words('specific hum(idity)?|spec hum|q2m|qv2m|huss|spfh|spezifische feuchte|humidite specifique|humedad especifica') },
  { quantity: 'mixingRatio', words: words('(water )?(vapou?r )?mixing ratio|mischungsverhaltnis|rapport de melange|razon de mezcla') },
  { quantity: 'windEast', words: words('u10m?|u ?wind|wind ?u|u ?comp(onent)?( of wind)?( .*)?|10m? u comp(onent)?( .*)?|ugrd( .*)?|eastward wind( .*)?|uas|u2m?|u50m?') },
  { quantity: 'windNorth', words: words('v10m?|v ?wind|wind ?v|v ?comp(onent)?( of wind)?( .*)?|10m? v comp(onent)?( .*)?|vgrd( .*)?|northward wind( .*)?|vas|v2m?|v50m?') },
  { quantity: 'relativeHumidity', words: words('rh|rh ?2m?|r ?hum|rel hum|relative humidity|humidity|humid|hum|hr|hrel|ur|rf|(rel(ative)? )?(luft)?feucht(e|igkeit)|humidite|humedad|umidita|umidade|(relatieve )?vochtigheid|습도|상대습도|相対湿度|湿度|相对湿度|相對濕度|out hum|hum out|vochtigheid'), not: words('specific|absolute|spezifische|mixing|in|inside|indoor|soil|max|min') },
  { quantity: 'windDirection', words: words('wd|wd ?10m?|w ?dir|wind ?dir|wind ?direction|wind ?richtung|windrichting|direction|direccion|direzione|direcao|dir|dd ?10|dd|wind ?dir(ection)?( ?10m?)?|풍향|風向|风向') },
  { quantity: 'windSpeed', words: words('ws|ws ?10m?|w ?spd|wind ?spd|wind ?speed|wind ?velocity|wind|vwind|windgeschwindigkeit|windsnelheid|vent|viento|vento|(vitesse|velocidad|velocita|velocidade)( .*)?|ff ?10|ff|fh|u10|wind ?speed ?10m?|ws ?f|풍속|風速|风速'), not: words('max|maximum|chill|gust|gusts|hi|high|peak|dir|direction|run|std|sd|min|fx') },
  { quantity: 'skyLongwave', words: words('lw ?(dn|d|down|dwn|in)?|long ?wave( .*)?|dw ir|ir h|ir|lwdown|rlds|ldr|ildr|ild|infrared( .*)?|infrarouge|infrarrojo|infrarossa|gegenstrahlung|atmosphaerische gegenstrahlung|thermal radiation|allsky sfc lw dwn|strd|a ?strahl.*|lw in f|lw ?in( .*)?'), not: words('up|uw|net|out|upward|outgoing|upwelling|qc|theta|potential|std') },
  { quantity: 'directNormal', words: words('dni|bni|gb n|direct ?n|direct normal|beam normal|direct n|direktnormal.*|dnr|allsky sfc sw dni|direct normal irradiance|normale directe|normal directa') },
  { quantity: 'directHorizontal', words: words('bhi|direct horizontal|beam horizontal|direct radiation|direct|direktstrahlung|gb h') },
  { quantity: 'diffuseHorizontal', words: words('dhi|dif|diff|diffuse?|diffuse?( .*)|difusa|diffusa|gd h|himmelsstrahlung|allsky sfc sw diff|difhi') , not: words('clear ?sky|pct|percent|qc') },
  { quantity: 'globalHorizontal', words: words('ghi|g h|glo|global|global(e)?( .*)|globalstrahlung|globaal|short ?wave( .*)?|sw|sw ?(dn|d|down|dwn|in)|dw solar|solar|solar rad.*|solar irr.*|rsds|swdown|rayonnement( .*)?|radiacion( .*)?|radiazione( .*)?|radiacao( .*)?|irradiance|irradiation|srad|allsky sfc sw dwn|sw in f|sw ?in( .*)?|slr ?w?( .*)?|slrw( .*)?|sol(ar)? rad.*|일사|日射量|全天日射量|总辐射|太阳辐射|q'), not: words('up|uw|net|out|upward|outgoing|reflected|uv|par|long ?wave|tilt(ed)?|clear ?sky|std|max|qc|hi|energy') },
  { quantity: 'opaqueCloud', words: words('opq cld|opaque( .*)?|opq') },
  { quantity: 'totalCloud', words: words('tot ?cld|total cloud|cloud ?cover|cloudiness|cloud|clouds|cloud amt|tcc|cld|bedeckung(sgrad)?|bewoelkung|bewolkung|nebulosite|nubosidad|nuvolosita|nebulosidade|bewolking|octas|oktas|전운량|雲量|总云量|雲量10分比|cloud opacity'), not: words('type|height|base|ceiling|low|mid|high') },
  { quantity: 'pressure', words: words('pressure|press|pres|baro|barometer|barometric|surface pressure|station pressure|luftdruck|druck|pression|presion|pressione|pressao|luchtdruk|ps|sp|p|patm|p atm|bp|bp mbar|pa|pa f|bar|stn press|현지기압|現地気圧|本站气压|气压'), not: words('sea|slp|msl|qnh|qff|vapou?r|vap|nn|nmm|qc|std') },
  { quantity: 'latitude', words: words('lat|latitude|breite') },
  { quantity: 'longitude', words: words('lon|long|longitude|laenge') },
  { quantity: 'airTemp', words: words('t|ta|t ?air|tair|t ?2m?|temp|temperature|air ?temp|air temperature|(outdoor|outside|ambient|exterior)( temp(erature)?)?|dry ?bulb|dry bulb temp(erature)?|tdb|db|lufttemp(eratur)?|aussentemp(eratur)?|temperatur|temperatura|temperature( .*)|temperatuur|luchttemperatuur|tas|tt ?10|tt|t ?amb|tamb|tmed|temp out|out temp|air ?tc?|air ?tc? avg|airt|ta f|air temp( .*)?|기온|気温|气温|氣溫'), not: words('hi|low|high|in|logger|panel|ptemp|potential|virtual|theta|std|sd|qc|index|ts|heat|soil|wet|surface|ground|boden|dew|max|min|sea|water|inside|indoor|room|panel|skin|sky|case|dome|tank|feels|apparent|wind chill') },
  { quantity: 'hourOfYear', words: words('hoy|hour of (the )?year|h of y') },
  { quantity: 'dayOfYear', words: words('doy|j ?day|jd|day of (the )?year|julian( day)?|yday|tag des jahres') },
  { quantity: 'epoch', words: words('epoch|unix|unix ?time|timestamp|dt|time') },
  { quantity: 'stampNumber', words: words('yyyymmdd.*|mess datum|datetime|date|datum|timestamp|yyyymmddhh|timestamp( start| end)?|일시|年月日時|日時|时间|時間') },
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
    .normalize('NFC')
    .replace(/ß/g, 'ss')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
}
