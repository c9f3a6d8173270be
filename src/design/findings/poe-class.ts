import { fixed } from "../chain/words.ts";
import { COMMON_PORT_CLASS } from "../practice/wiring.ts";
import type { Rule } from "./rule.ts";

export const poeClass: Rule = ({ wiring }) => {
  const hungry = wiring?.poeRuns.find((run) => run.poeClass === 0 || run.poeClass > COMMON_PORT_CLASS);
  if (!hungry) return null;
  const drawn = `${hungry.device} draws ${fixed(hungry.deviceW, 0)} W by night`;
  return {
    id: "wiring.poeClass",
    severity: hungry.poeClass === 0 ? "stop" : "caution",
    says:
      hungry.poeClass === 0
        ? `${drawn}, more than the 71 W that any PoE class brings to a device.`
        : `${drawn}: that is PoE class ${hungry.poeClass}, and common ports end at class ${COMMON_PORT_CLASS} (25.5 W at the device).`,
    change:
      hungry.poeClass === 0
        ? "Feed it with DC, or choose a device that draws less."
        : `Buy a switch with ports of class ${hungry.poeClass}, or choose a device that draws less than 25 W.`,
    numbers: { device: hungry.device, deviceW: hungry.deviceW, poeClass: hungry.poeClass },
    topics: ["loads.camera", "loads.turning", "loads.infrared", "loads.turningInfrared"],
  };
};
