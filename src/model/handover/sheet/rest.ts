/** Rest of a pump or fan after each stop, min: it spares motor and relay (common practice, no source). The year leaves it out. */
export const REST_min = 10
