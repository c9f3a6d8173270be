/**
 * What ITU-R's digital maps say of some places.
 *
 * Rain rates of the first five and the desert: the ITU-R study group's validation examples (CG-3M-3J-13, "ValEx" revision
 * 5.1, sheet P.837), as carried in the test data of itur. That sheet has two more points, 22.9, -43.23 and 33.94, 18.43,
 * which look like Rio de Janeiro and Cape Town with the minus sign lost and are often quoted for those cities: its values
 * belong to the northern points as printed, which lie in the open Atlantic and Mediterranean, where we have no answer.
 *
 * Gradient and roughness: the grids shipped with itur 0.4.0 (P.453 65 m, 1 %; P.530 terrain roughness), interpolated
 * bilinearly by an independent script. Rain rates and temperatures of the second list: functions of itur 0.4.0.
 */
export const rainValidation = [
  { place: "Kuala Lumpur", latitudeDeg: 3.133, longitudeDeg: 101.7, rainRate001MmPerH: 99.148 },
  { place: "Miami", latitudeDeg: 25.78, longitudeDeg: -80.22, rainRate001MmPerH: 78.298 },
  { place: "Delhi", latitudeDeg: 28.717, longitudeDeg: 77.3, rainRate001MmPerH: 63.597 },
  { place: "Rome", latitudeDeg: 41.9, longitudeDeg: 12.49, rainRate001MmPerH: 33.936 },
  { place: "London", latitudeDeg: 51.5, longitudeDeg: -0.14, rainRate001MmPerH: 26.481 },
  { place: "desert", latitudeDeg: 23, longitudeDeg: 30, rainRate001MmPerH: 0 },
] as const;

export const signLost = [
  { looksLike: "Rio de Janeiro", latitudeDeg: 22.9, longitudeDeg: -43.23, rainRate001MmPerH: 50.639 },
  { looksLike: "Cape Town", latitudeDeg: 33.94, longitudeDeg: 18.43, rainRate001MmPerH: 27.135 },
] as const;

export const refractivity = [
  { place: "London", latitudeDeg: 51.5, longitudeDeg: -0.14, gradientPerKm: -121.8, roughnessM: 39.9 },
  { place: "Madrid", latitudeDeg: 40.42, longitudeDeg: -3.7, gradientPerKm: -191.8, roughnessM: 257.3 },
  { place: "Rome", latitudeDeg: 41.9, longitudeDeg: 12.49, gradientPerKm: -308.5, roughnessM: 297.8 },
  { place: "Minneapolis", latitudeDeg: 44.98, longitudeDeg: -93.27, gradientPerKm: -184.8, roughnessM: 26.7 },
  { place: "Denver", latitudeDeg: 39.74, longitudeDeg: -104.99, gradientPerKm: -301.2, roughnessM: 512.5 },
  { place: "Miami", latitudeDeg: 25.78, longitudeDeg: -80.22, gradientPerKm: -142.5, roughnessM: 1.5 },
  { place: "Nairobi", latitudeDeg: -1.29, longitudeDeg: 36.82, gradientPerKm: -71.5, roughnessM: 346.7 },
  {
    place: "Kuala Lumpur",
    latitudeDeg: 3.133,
    longitudeDeg: 101.7,
    gradientPerKm: -174.8,
    roughnessM: 232.1,
  },
  { place: "Sydney", latitudeDeg: -33.87, longitudeDeg: 151.21, gradientPerKm: -234.0, roughnessM: 100.1 },
  { place: "Auckland", latitudeDeg: -36.85, longitudeDeg: 174.76, gradientPerKm: -85.5, roughnessM: 66.4 },
] as const;

/** Mean temperatures of January and July, degC, at the map's own ground; rain rate 0.01 %; all from itur 0.4.0. */
export const temperature = [
  {
    place: "Nairobi",
    latitudeDeg: -1.29,
    longitudeDeg: 36.82,
    januaryC: 20.25,
    julyC: 17.44,
    rainRate001MmPerH: 45.96,
  },
  {
    place: "Auckland",
    latitudeDeg: -36.85,
    longitudeDeg: 174.76,
    januaryC: 19.26,
    julyC: 11.71,
    rainRate001MmPerH: 41.77,
  },
  {
    place: "Minneapolis",
    latitudeDeg: 44.98,
    longitudeDeg: -93.27,
    januaryC: -9.59,
    julyC: 22.53,
    rainRate001MmPerH: 36.82,
  },
  {
    place: "Madrid",
    latitudeDeg: 40.42,
    longitudeDeg: -3.7,
    januaryC: 4.54,
    julyC: 24.63,
    rainRate001MmPerH: 25.27,
  },
  {
    place: "La Paz",
    latitudeDeg: -16.5,
    longitudeDeg: -68.15,
    januaryC: 11.3,
    julyC: 6.38,
    rainRate001MmPerH: 24.66,
  },
  {
    place: "Fiji, beside the date line",
    latitudeDeg: -16.8,
    longitudeDeg: 179.9,
    januaryC: 26.89,
    julyC: 24.23,
    rainRate001MmPerH: 96.99,
  },
  {
    place: "Fairbanks",
    latitudeDeg: 64.84,
    longitudeDeg: -147.72,
    januaryC: -20.97,
    julyC: 15.79,
    rainRate001MmPerH: 17.79,
  },
] as const;
