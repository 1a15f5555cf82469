import { answerWithoutFinding } from './answer-without-finding.ts';
import { cellsAgainstPrint } from './cells-against-print.ts';
import { deliveredEnergyPlausible } from './delivered-energy-plausible.ts';
import { ratedCapacityNotReached } from './rated-capacity-not-reached.ts';
import { powerDoesNotLast } from './power-does-not-last.ts';
import { sustainedNotShown } from './sustained-not-shown.ts';
import { bareMetalByCamera } from './bare-metal-by-camera.ts';
import type { Check } from './check.ts';
import { partAboveRatedTemperature } from './part-above-rated-temperature.ts';
import { capacityNeedsVoltage } from './capacity-needs-voltage.ts';
import { xCapacitorDischarge } from './x-capacitor-discharge.ts';
import { alikePortsDiffer } from './alike-ports-differ.ts';
import { assuredSumAboveTotal } from './assured-sum-above-total.ts';
import { barrierCapacitorClass } from './barrier-capacitor-class.ts';
import { capacitorVoltageCustomary } from './capacitor-voltage-customary.ts';
import { capacitorVoltageMargin } from './capacitor-voltage-margin.ts';
import { capacityAgrees } from './capacity-agrees.ts';
import { cellsOpened } from './cells-opened.ts';
import { claimAgainstComputed } from './claim-against-computed.ts';
import { coreResetAgainstDuty } from './core-reset-against-duty.ts';
import { claimedDensityPlausible } from './claimed-density-plausible.ts';
import { claimsDiffer } from './claims-differ.ts';
import { statedOtherwise } from './stated-otherwise.ts';
import { deratingPolicyUnknown } from './derating-policy-unknown.ts';
import { densityPlausible } from './density-plausible.ts';
import { efficiencyConditions } from './efficiency-conditions.ts';
import { efficiencyMarginAgrees } from './efficiency-margin-agrees.ts';
import { efficiencyPlausible } from './efficiency-plausible.ts';
import { efficiencyRowAgrees } from './efficiency-row-agrees.ts';
import { formerAddresses } from './former-addresses.ts';
import { protectionMargin } from './protection-margin.ts';
import { insulationDistanceBelow } from './insulation-distance-below.ts';
import { insulationDistancePlausible } from './insulation-distance-plausible.ts';
import { isolationClaims } from './isolation-claims.ts';
import { markedAgainstMeasured } from './marked-against-measured.ts';
import { conversionOfCharges } from './conversion-of-charges.ts';
import { reportedAgainstMeasured } from './reported-against-measured.ts';
import { massPlausible } from './mass-plausible.ts';
import { nameplateInputPlausible } from './nameplate-input-plausible.ts';
import { offersAgainstRatedPower } from './offers-against-rated-power.ts';
import { outputCapacityPlausible } from './output-capacity-plausible.ts';
import { partNumberDateCode } from './part-number-date-code.ts';
import { partCountPlausible } from './part-count-plausible.ts';
import { partValuePlausible } from './part-value-plausible.ts';
import { photoDescription } from './photo-description.ts';
import { photoDistance } from './photo-distance.ts';
import { poolCountedAsEach } from './pool-counted-as-each.ts';
import { portAboveOwnLimit } from './port-above-own-limit.ts';
import { portGainsFromNeighbour } from './port-gains-from-neighbour.ts';
import { poweredOpen } from './powered-open.ts';
import { preferredValues } from './preferred-values.ts';
import { proseAgainstData } from './prose-against-data.ts';
import { publicationDates } from './publication-dates.ts';
import { publishedWithoutSummary } from './published-without-summary.ts';
import { ratingExceeded } from './rating-exceeded.ts';
import { rectifierVoltageMargin } from './rectifier-voltage-margin.ts';
import { safeAsVerdict } from './safe-as-verdict.ts';
import { sameSetTwice } from './same-set-twice.ts';
import { screwdriverDischarge } from './screwdriver-discharge.ts';
import { shareBetweenSteps } from './share-between-steps.ts';
import { rippleBandwidth } from './ripple-bandwidth.ts';
import { cableEndVoltage } from './cable-end-voltage.ts';
import { currentWithoutCable } from './current-without-cable.ts';
import { usbPdWithoutList } from './usb-pd-without-list.ts';
import { dataLineProtocol } from './data-line-protocol.ts';
import { firstOffer } from './first-offer.ts';
import { offerOrder } from './offer-order.ts';
import { offerTwice } from './offer-twice.ts';
import { offerCount } from './offer-count.ts';
import { requiredOffers } from './required-offers.ts';
import { optionalOffers } from './optional-offers.ts';
import { ppsRanges } from './pps-ranges.ts';
import { ppsCurrents } from './pps-currents.ts';
import { eprBit } from './epr-bit.ts';
import { avsOffers } from './avs-offers.ts';
import { cableOfOffers } from './cable-of-offers.ts';
import { offerFlags } from './offer-flags.ts';
import { plainOutputs } from './plain-outputs.ts';
import { ratedPowerSteps } from './rated-power-steps.ts';
import { variableRange } from './variable-range.ts';
import { senseResistorsArrangement } from './sense-resistors-arrangement.ts';
import { shareNotOffered } from './share-not-offered.ts';
import { sharesAboveTotal } from './shares-above-total.ts';
import { storedChargeUnproven } from './stored-charge-unproven.ts';
import { surfaceTooHot } from './surface-too-hot.ts';
import { switchVoltageMargin } from './switch-voltage-margin.ts';
import { touchVoltageOpenMeter } from './touch-voltage-open-meter.ts';
import { totalOutOfReach } from './total-out-of-reach.ts';
import { turnsRatioAgainstVoltages } from './turns-ratio-against-voltages.ts';
import { turnsRatioAgrees } from './turns-ratio-agrees.ts';
import { xCapacitorClass } from './x-capacitor-class.ts';
import { yCapacitorCurrentHigh } from './y-capacitor-current-high.ts';

/** Rules on what an entry says: port shares, label, size, parts, measurements, cautions, text, publication. */
const ON_ENTRIES: readonly Check[] = [
  portAboveOwnLimit,
  sharesAboveTotal,
  poolCountedAsEach,
  portGainsFromNeighbour,
  sameSetTwice,
  alikePortsDiffer,
  shareBetweenSteps,
  shareNotOffered,
  totalOutOfReach,
  assuredSumAboveTotal,
  offersAgainstRatedPower,
  firstOffer,
  offerOrder,
  offerTwice,
  offerCount,
  requiredOffers,
  optionalOffers,
  ppsRanges,
  ppsCurrents,
  eprBit,
  avsOffers,
  variableRange,
  cableOfOffers,
  offerFlags,
  plainOutputs,
  cableEndVoltage,
  rippleBandwidth,
  currentWithoutCable,
  usbPdWithoutList,
  dataLineProtocol,
  ratedPowerSteps,
  nameplateInputPlausible,
  capacityAgrees,
  capacityNeedsVoltage,
  outputCapacityPlausible,
  densityPlausible,
  massPlausible,
  claimAgainstComputed,
  claimedDensityPlausible,
  claimsDiffer,
  deratingPolicyUnknown,
  ratingExceeded,
  capacitorVoltageMargin,
  switchVoltageMargin,
  rectifierVoltageMargin,
  protectionMargin,
  xCapacitorClass,
  xCapacitorDischarge,
  barrierCapacitorClass,
  yCapacitorCurrentHigh,
  touchVoltageOpenMeter,
  partNumberDateCode,
  partCountPlausible,
  partValuePlausible,
  preferredValues,
  capacitorVoltageCustomary,
  markedAgainstMeasured,
  turnsRatioAgrees,
  turnsRatioAgainstVoltages,
  coreResetAgainstDuty,
  senseResistorsArrangement,
  statedOtherwise,
  insulationDistancePlausible,
  insulationDistanceBelow,
  surfaceTooHot,
  partAboveRatedTemperature,
  bareMetalByCamera,
  cellsAgainstPrint,
  deliveredEnergyPlausible,
  ratedCapacityNotReached,
  powerDoesNotLast,
  sustainedNotShown,
  reportedAgainstMeasured,
  conversionOfCharges,
  efficiencyPlausible,
  efficiencyConditions,
  efficiencyRowAgrees,
  efficiencyMarginAgrees,
  storedChargeUnproven,
  poweredOpen,
  cellsOpened,
  proseAgainstData,
  safeAsVerdict,
  screwdriverDischarge,
  isolationClaims,
  publishedWithoutSummary,
  publicationDates,
  formerAddresses,
  photoDescription,
  photoDistance,
];

/** Every rule that is checked on an entry that could be read. */
export const CHECKS: readonly Check[] = [...ON_ENTRIES, answerWithoutFinding(ON_ENTRIES)];
