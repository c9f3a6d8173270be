import type { World } from "../design.ts";
import type { Finding } from "../finding.ts";
import { cableLength } from "./cable-length.ts";
import { ceiling } from "./ceiling.ts";
import { cellularData } from "./cellular-data.ts";
import { chargeCurrent } from "./charge-current.ts";
import { controllerChemistry } from "./controller-chemistry.ts";
import { controllerCurrent } from "./controller-current.ts";
import { currency } from "./currency.ts";
import { darkHours } from "./dark-hours.ts";
import { darkMonths } from "./dark-months.ts";
import { deviceVoltage } from "./device-voltage.ts";
import { dimMonths } from "./dim-months.ts";
import { footing } from "./footing.ts";
import { frostHours } from "./frost-hours.ts";
import { groundFrame } from "./ground-frame.ts";
import { gust } from "./gust.ts";
import { heavyBlock } from "./heavy-block.ts";
import { infraredReach } from "./infrared-reach.ts";
import { inputVoltage } from "./input-voltage.ts";
import { leadFreezing } from "./lead-freezing.ts";
import { linkAvailability } from "./link-availability.ts";
import { linkBlocked } from "./link-blocked.ts";
import { linkCapacity } from "./link-capacity.ts";
import { cableInstead, otherCarrier, otherClass } from "./link-choice.ts";
import { linkFar } from "./link-far.ts";
import { linkGrowth } from "./link-growth.ts";
import { linkHidden } from "./link-hidden.ts";
import { linkMargin } from "./link-margin.ts";
import { linkSight } from "./link-sight.ts";
import { linkUnread } from "./link-unread.ts";
import { lithiumFrost } from "./lithium-frost.ts";
import { manyStrings } from "./many-strings.ts";
import { nightShare } from "./night-share.ts";
import { noDevice } from "./no-device.ts";
import { overheadLine } from "./overhead-line.ts";
import { ownedBattery } from "./owned-battery.ts";
import { ownedPanel } from "./owned-panel.ts";
import { pictureDetail } from "./picture-detail.ts";
import { pictureWidth } from "./picture-width.ts";
import { placeUnknown } from "./place-unknown.ts";
import { poeClass } from "./poe-class.ts";
import { poleHeight } from "./pole-height.ts";
import { radarSilence } from "./radar-silence.ts";
import { radioFeed } from "./radio-feed.ts";
import { radioRegion } from "./radio-region.ts";
import { recovery } from "./recovery.ts";
import type { Rule, Worked } from "./rule.ts";
import { secondWay } from "./second-way.ts";
import { severalControllers } from "./several-controllers.ts";
import { shade } from "./shade.ts";
import { shortCircuit } from "./short-circuit.ts";
import { sound } from "./sound.ts";
import { sunUncertainty } from "./sun-uncertainty.ts";
import { support } from "./support.ts";
import { tallMast } from "./tall-mast.ts";
import { toConfirm } from "./to-confirm.ts";
import { tube } from "./tube.ts";
import { twoSizings } from "./two-sizings.ts";
import { twoSources } from "./two-sources.ts";
import { visit } from "./visit.ts";
import { wallFacing } from "./wall-facing.ts";
import { wireSize } from "./wire-size.ts";

/**
 * In the order in which they are told: what can kill, what cannot work there, what does not fit, what one must do or ask
 * first, what is good to know.
 */
export const rules: readonly Rule[] = [
  overheadLine,
  placeUnknown,
  noDevice,
  darkMonths,
  footing,
  tube,
  tallMast,
  poleHeight,
  support,
  wallFacing,
  gust,
  groundFrame,
  inputVoltage,
  controllerChemistry,
  controllerCurrent,
  ownedBattery,
  ownedPanel,
  radioFeed,
  deviceVoltage,
  poeClass,
  wireSize,
  shortCircuit,
  cableLength,
  linkUnread,
  linkBlocked,
  linkFar,
  linkMargin,
  linkCapacity,
  linkSight,
  radioRegion,
  linkAvailability,
  linkGrowth,
  darkHours,
  lithiumFrost,
  leadFreezing,
  frostHours,
  dimMonths,
  shade,
  manyStrings,
  heavyBlock,
  severalControllers,
  chargeCurrent,
  recovery,
  visit,
  pictureDetail,
  pictureWidth,
  infraredReach,
  sound,
  cellularData,
  cableInstead,
  otherCarrier,
  otherClass,
  linkHidden,
  ceiling,
  currency,
  radarSilence,
  secondWay,
  nightShare,
  twoSizings,
  twoSources,
  sunUncertainty,
  toConfirm,
];

/** Everything one must know of a design, stops first; within a severity in the order of the rules. */
export function findingsOf(design: Worked, world: World): readonly Finding[] {
  const grave = { stop: 0, caution: 1, note: 2 } as const;
  return rules
    .map((rule) => rule(design, world))
    .filter((finding) => finding !== null)
    .toSorted((a, b) => grave[a.severity] - grave[b.severity]);
}
