import { accountGuide } from "./accountGuide";
import { chargesGuide } from "./chargesGuide";
import { datesGuide } from "./datesGuide";
import { estimatesGuide } from "./estimatesGuide";
import type { GuideFunction } from "./guideFunction";
import { liabilityGuide } from "./liabilityGuide";
import { requestGuide } from "./requestGuide";
import { rulesGuide } from "./rulesGuide";

/** Every worksheet function, in the order the guide shows it: the tasks as they come up in a season. */
export const functionGuide: readonly GuideFunction[] = [
  ...datesGuide,
  ...liabilityGuide,
  ...requestGuide,
  ...chargesGuide,
  ...accountGuide,
  ...estimatesGuide,
  ...rulesGuide,
];
