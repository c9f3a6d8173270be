/**
 * Where a currency is the money that people pay in, by ISO 4217 code: every country and territory, for the absence of one
 * is taken for a sign too. The country that a currency is first of all of stands first.
 *
 * @source ISO 4217 and ISO 3166-1 as of 2026 (Bulgaria pays in euro), from memory; currencies that are not here are not known
 */
const COUNTRIES: Readonly<Record<string, string>> = {
  AED: "AE",
  ARS: "AR",
  AUD: "AU CC CX KI NF NR TV",
  BDT: "BD",
  BOB: "BO",
  BRL: "BR",
  BWP: "BW",
  CAD: "CA",
  CHF: "CH LI",
  CLP: "CL",
  CNY: "CN",
  COP: "CO",
  CRC: "CR",
  CZK: "CZ",
  DKK: "DK FO GL",
  DOP: "DO",
  DZD: "DZ",
  EGP: "EG",
  ETB: "ET",
  EUR: "DE AD AT AX BE BG BL CY EE ES FI FR GF GP GR HR IE IT LT LU LV MC ME MF MQ MT NL PM PT RE SI SK SM VA XK YT",
  GBP: "GB FK GG GI IM JE SH",
  GHS: "GH",
  GTQ: "GT",
  HKD: "HK",
  HNL: "HN",
  HUF: "HU",
  IDR: "ID",
  ILS: "IL PS",
  INR: "IN BT",
  ISK: "IS",
  JPY: "JP",
  KES: "KE",
  KRW: "KR",
  KZT: "KZ",
  LKR: "LK",
  MAD: "MA EH",
  MXN: "MX",
  MYR: "MY",
  MZN: "MZ",
  NGN: "NG",
  NIO: "NI",
  NOK: "NO BV SJ",
  NPR: "NP",
  NZD: "NZ CK NU PN TK",
  PEN: "PE",
  PHP: "PH",
  PKR: "PK",
  PLN: "PL",
  PYG: "PY",
  RON: "RO",
  RSD: "RS",
  RWF: "RW",
  SAR: "SA",
  SEK: "SE",
  SGD: "SG BN",
  THB: "TH",
  TND: "TN",
  TRY: "TR",
  TWD: "TW",
  TZS: "TZ",
  UAH: "UA",
  UGX: "UG",
  USD: "US AS BQ BS BZ EC FM GU IO KH LB LR MH MP PA PR PW SV TC TL UM VG VI ZW",
  UYU: "UY",
  VND: "VN",
  XAF: "CM CF CG GA GQ TD",
  XOF: "SN BF BJ CI GW ML NE TG",
  ZAR: "ZA LS NA SZ",
  ZMW: "ZM",
};

/**
 * Whether people pay in a currency in a country.
 *
 * @param currency     ISO 4217
 * @param countryCode  ISO 3166-1 alpha-2
 * @returns null where the currency is not known here
 */
export function isPaidIn({
  currency,
  countryCode,
}: {
  readonly currency: string;
  readonly countryCode: string;
}): boolean | null {
  const countries = Object.hasOwn(COUNTRIES, currency) ? COUNTRIES[currency]! : null;
  return countries === null ? null : countries.split(" ").includes(countryCode);
}

/**
 * The currency that people in a country commonly pay in; null where it is not known here.
 *
 * @param countryCode  ISO 3166-1 alpha-2
 */
export function currencyOf(countryCode: string): string | null {
  const entries = Object.entries(COUNTRIES).map(([code, countries]) => ({ code, in: countries.split(" ") }));
  const own = entries.find((entry) => entry.in[0] === countryCode);
  return (own ?? entries.find((entry) => entry.in.includes(countryCode)))?.code ?? null;
}
