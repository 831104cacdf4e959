/**
 * Colours of the charts. Every series also differs by dash, width or marker, so that a chart reads without
 * colour and on paper; these only make it pleasant.
 */
export interface Ink {
  readonly text: string
  readonly soft: string
  readonly grid: string
  readonly ground: string
  readonly outdoor: string
  readonly without: string
  readonly room: string
  readonly store: string
  readonly limit: string
  readonly night: string
}

const DAY: Ink = {
  text: '#1a1f33',
  soft: '#50576e',
  grid: '#e3dfd3',
  ground: '#fffdf8',
  outdoor: '#b8860b',
  without: '#a8470f',
  room: '#35439b',
  store: '#0b7c8a',
  limit: '#1a1f33',
  night: 'rgba(53, 67, 155, 0.09)',
}

const NIGHT: Ink = {
  text: '#eceaf4',
  soft: '#b3b8d0',
  grid: '#2b3357',
  ground: '#171d38',
  outdoor: '#e0c068',
  without: '#f4a873',
  room: '#a9b8ff',
  store: '#7ed3dc',
  limit: '#eceaf4',
  night: 'rgba(0, 0, 0, 0.28)',
}

const PAPER: Ink = {
  text: '#000',
  soft: '#222',
  grid: '#ccc',
  ground: '#fff',
  outdoor: '#777',
  without: '#555',
  room: '#000',
  store: '#333',
  limit: '#000',
  night: 'rgba(0, 0, 0, 0.07)',
}

export type Scheme = 'day' | 'night' | 'paper'

export const INKS: Readonly<Record<Scheme, Ink>> = { day: DAY, night: NIGHT, paper: PAPER }
