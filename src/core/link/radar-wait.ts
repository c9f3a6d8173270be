/**
 * What a band's radar rule does to a post: after every power cut its radio listens before it may send, one minute, or
 * ten in the European weather-radar range 5600-5650 MHz; it leaves a channel within 10 s of hearing radar and stays
 * away for 30 minutes. From memory of 47 CFR 15.407(h) and EN 301 893.
 */
export const RADAR = { dfs: true, silenceAfterPowerCutS: 60 } as const;
export const WEATHER_RADAR = { dfs: true, silenceAfterPowerCutS: 600 } as const;
export const NO_RADAR = { dfs: false, silenceAfterPowerCutS: 0 } as const;

/** When the figures of the rule tables were read or remembered. */
export const AS_OF = "2025-11";
