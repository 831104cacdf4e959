import { readFileSync } from 'node:fs'
import { indexTowns, readClimatePlaces, readTowns } from '#model/outdoors/place'
import { ROOT } from '../../../house-rules/source-files.ts'

const bytesOf = (file: string) => new Uint8Array(readFileSync(`${ROOT}static/places/${file}`))

export const climateBytes = bytesOf('climate-places.bin')
export const townBytes = bytesOf('towns.bin')
export const decoded = (bytes: Uint8Array) => new TextDecoder().decode(bytes)
export const PLACES = readClimatePlaces(climateBytes)
export const TOWNS = readTowns(townBytes, decoded)
export const INDEX = indexTowns(TOWNS)
