// biome-ignore-all assist/source/organizeImports: written by `npm run generate`; do not edit.
import quantityAdvanceLength from './quantities/advance-length.ts';
import quantityAreaPerTon from './quantities/area-per-ton.ts';
import quantityBufferFound from './quantities/buffer-found.ts';
import quantityBufferLength from './quantities/buffer-length.ts';
import quantityClosureLength from './quantities/closure-length.ts';
import quantityConeHeight from './quantities/cone-height.ts';
import quantityDeepestDepth from './quantities/deepest-depth.ts';
import quantityDeviceCount from './quantities/device-count.ts';
import quantityDeviceRun from './quantities/device-run.ts';
import quantityDeviceSpacing from './quantities/device-spacing.ts';
import quantityDeviceSpacingTangent from './quantities/device-spacing-tangent.ts';
import quantityDeviceSpacingTaper from './quantities/device-spacing-taper.ts';
import quantityDownstreamTaper from './quantities/downstream-taper.ts';
import quantityDumpSpacing from './quantities/dump-spacing.ts';
import quantityEndSpread from './quantities/end-spread.ts';
import quantityFeatherCount from './quantities/feather-count.ts';
import quantityFeatherLength from './quantities/feather-length.ts';
import quantityFirstLiftMass from './quantities/first-lift-mass.ts';
import quantityFlaggerSight from './quantities/flagger-sight.ts';
import quantityFlaggerTaper from './quantities/flagger-taper.ts';
import quantityFlaggers from './quantities/flaggers.ts';
import quantityFullLength from './quantities/full-length.ts';
import quantityGrade from './quantities/grade.ts';
import quantityLastLiftMass from './quantities/last-lift-mass.ts';
import quantityLegalPayload from './quantities/legal-payload.ts';
import quantityLengthPerTon from './quantities/length-per-ton.ts';
import quantityLiftCount from './quantities/lift-count.ts';
import quantityLiftLoose from './quantities/lift-loose.ts';
import quantityLiftMass from './quantities/lift-mass.ts';
import quantityLiftMax from './quantities/lift-max.ts';
import quantityLiftMaxDense from './quantities/lift-max-dense.ts';
import quantityLiftMin from './quantities/lift-min.ts';
import quantityLiftMinDense from './quantities/lift-min-dense.ts';
import quantityLiftSplit from './quantities/lift-split.ts';
import quantityLiftThickness from './quantities/lift-thickness.ts';
import quantityLoadArea from './quantities/load-area.ts';
import quantityLoadLength from './quantities/load-length.ts';
import quantityLoadsLeft from './quantities/loads-left.ts';
import quantityLoadsPlaced from './quantities/loads-placed.ts';
import quantityLongTaperSpacing from './quantities/long-taper-spacing.ts';
import quantityMaxSpecificGravity from './quantities/max-specific-gravity.ts';
import quantityMergingTaper from './quantities/merging-taper.ts';
import quantityMixNominalSize from './quantities/mix-nominal-size.ts';
import quantityOffset from './quantities/offset.ts';
import quantityOneLaneLength from './quantities/one-lane-length.ts';
import quantityOpenLaneWidth from './quantities/open-lane-width.ts';
import quantityOrderLoads from './quantities/order-loads.ts';
import quantityPatchArea from './quantities/patch-area.ts';
import quantityPatchCount from './quantities/patch-count.ts';
import quantityPatchDepth from './quantities/patch-depth.ts';
import quantityPatchLength from './quantities/patch-length.ts';
import quantityPatchVolume from './quantities/patch-volume.ts';
import quantityPatchWidth from './quantities/patch-width.ts';
import quantityPlacedDepth from './quantities/placed-depth.ts';
import quantityPlacedLength from './quantities/placed-length.ts';
import quantityPlacedMass from './quantities/placed-mass.ts';
import quantityPlacedRate from './quantities/placed-rate.ts';
import quantityPlacedShare from './quantities/placed-share.ts';
import quantityPostedSpeed from './quantities/posted-speed.ts';
import quantityPostedWeight from './quantities/posted-weight.ts';
import quantityPremixMass from './quantities/premix-mass.ts';
import quantityPremixOrder from './quantities/premix-order.ts';
import quantityQueueLength from './quantities/queue-length.ts';
import quantityQueueRoom from './quantities/queue-room.ts';
import quantityRollDown from './quantities/roll-down.ts';
import quantityRutCount from './quantities/rut-count.ts';
import quantityRutDepth from './quantities/rut-depth.ts';
import quantityRutFill from './quantities/rut-fill.ts';
import quantityRutLength from './quantities/rut-length.ts';
import quantityRutSection from './quantities/rut-section.ts';
import quantityRutVolume from './quantities/rut-volume.ts';
import quantityRutWidth from './quantities/rut-width.ts';
import quantityShiftingTaper from './quantities/shifting-taper.ts';
import quantityShortTaperMax from './quantities/short-taper-max.ts';
import quantityShortTaperMin from './quantities/short-taper-min.ts';
import quantityShortTaperSpacing from './quantities/short-taper-spacing.ts';
import quantityShoulderTaper from './quantities/shoulder-taper.ts';
import quantitySignDistance from './quantities/sign-distance.ts';
import quantitySignHeight from './quantities/sign-height.ts';
import quantitySignSpacingA from './quantities/sign-spacing-a.ts';
import quantitySignSpacingB from './quantities/sign-spacing-b.ts';
import quantitySignSpacingC from './quantities/sign-spacing-c.ts';
import quantitySpeedDrop from './quantities/speed-drop.ts';
import quantitySpreadRate from './quantities/spread-rate.ts';
import quantityStoneSize from './quantities/stone-size.ts';
import quantityStopTime from './quantities/stop-time.ts';
import quantityTableGrade from './quantities/table-grade.ts';
import quantityTableSpeed from './quantities/table-speed.ts';
import quantityTaperLength from './quantities/taper-length.ts';
import quantityTaperNeeded from './quantities/taper-needed.ts';
import quantityTonsLeft from './quantities/tons-left.ts';
import quantityTrafficVolume from './quantities/traffic-volume.ts';
import quantityTruckCount from './quantities/truck-count.ts';
import quantityTruckPayload from './quantities/truck-payload.ts';
import quantityTruckTare from './quantities/truck-tare.ts';
import quantityTurnRoom from './quantities/turn-room.ts';
import quantityUnitWeight from './quantities/unit-weight.ts';
import quantityWaste from './quantities/waste.ts';
import quantityWorkLength from './quantities/work-length.ts';
import quantityZoneLength from './quantities/zone-length.ts';
import quantityZoneLengthTurning from './quantities/zone-length-turning.ts';
import choiceAdvanceSigns from './choices/advance-signs.ts';
import choiceApparel from './choices/apparel.ts';
import choiceArrowBoard from './choices/arrow-board.ts';
import choiceBacking from './choices/backing.ts';
import choiceBaseState from './choices/base-state.ts';
import choiceBufferUse from './choices/buffer-use.ts';
import choiceChunkLook from './choices/chunk-look.ts';
import choiceConeUse from './choices/cone-use.ts';
import choiceControlRemoval from './choices/control-removal.ts';
import choiceCrackLook from './choices/crack-look.ts';
import choiceCrackState from './choices/crack-state.ts';
import choiceDefectExtent from './choices/defect-extent.ts';
import choiceDefectPlace from './choices/defect-place.ts';
import choiceDevicePlace from './choices/device-place.ts';
import choiceEdgeBreakState from './choices/edge-break-state.ts';
import choiceFlaggerPlace from './choices/flagger-place.ts';
import choiceFlaggersPosted from './choices/flaggers-posted.ts';
import choiceLaneEdge from './choices/lane-edge.ts';
import choiceLayoutKind from './choices/layout-kind.ts';
import choiceLiftRolling from './choices/lift-rolling.ts';
import choiceMatAge from './choices/mat-age.ts';
import choiceMixGradation from './choices/mix-gradation.ts';
import choiceMixKind from './choices/mix-kind.ts';
import choiceNightStation from './choices/night-station.ts';
import choiceOrderEnds from './choices/order-ends.ts';
import choicePatchEnds from './choices/patch-ends.ts';
import choicePatchShape from './choices/patch-shape.ts';
import choiceQueuePlace from './choices/queue-place.ts';
import choiceRecurring from './choices/recurring.ts';
import choiceRidgePlace from './choices/ridge-place.ts';
import choiceRoadType from './choices/road-type.ts';
import choiceRutEdges from './choices/rut-edges.ts';
import choiceSignGap from './choices/sign-gap.ts';
import choiceSignPlace from './choices/sign-place.ts';
import choiceSignsIdle from './choices/signs-idle.ts';
import choiceSoftPlace from './choices/soft-place.ts';
import choiceSpeedUnit from './choices/speed-unit.ts';
import choiceStickPlace from './choices/stick-place.ts';
import choiceStreakLook from './choices/streak-look.ts';
import choiceSurface from './choices/surface.ts';
import choiceTackState from './choices/tack-state.ts';
import choiceTaperKind from './choices/taper-kind.ts';
import choiceTrafficControlState from './choices/traffic-control-state.ts';
import choiceTrafficLevel from './choices/traffic-level.ts';
import choiceVisibility from './choices/visibility.ts';
import choiceWaterState from './choices/water-state.ts';
import choiceWavePlace from './choices/wave-place.ts';
import choiceWeatherState from './choices/weather-state.ts';
import choiceWorkDuration from './choices/work-duration.ts';
import relationAdvanceLength from './relations/advance-length.ts';
import relationAreaPerTon from './relations/area-per-ton.ts';
import relationBufferLength from './relations/buffer-length.ts';
import relationBufferLengthMetric from './relations/buffer-length-metric.ts';
import relationClosureLength from './relations/closure-length.ts';
import relationDeviceCountAsSpaced from './relations/device-count-as-spaced.ts';
import relationDeviceCountTangent from './relations/device-count-tangent.ts';
import relationDeviceCountTaper from './relations/device-count-taper.ts';
import relationDeviceCountTaperAsSpaced from './relations/device-count-taper-as-spaced.ts';
import relationDeviceCountTaperNeeded from './relations/device-count-taper-needed.ts';
import relationDeviceSpacingShortTaper from './relations/device-spacing-short-taper.ts';
import relationDeviceSpacingTangent from './relations/device-spacing-tangent.ts';
import relationDeviceSpacingTaper from './relations/device-spacing-taper.ts';
import relationDeviceSpacingTaperUnsaid from './relations/device-spacing-taper-unsaid.ts';
import relationDumpSpacing from './relations/dump-spacing.ts';
import relationFeatherCount from './relations/feather-count.ts';
import relationFirstLiftMass from './relations/first-lift-mass.ts';
import relationFullLength from './relations/full-length.ts';
import relationFullLengthPlain from './relations/full-length-plain.ts';
import relationLastLiftMass from './relations/last-lift-mass.ts';
import relationLegalPayload from './relations/legal-payload.ts';
import relationLengthPerTon from './relations/length-per-ton.ts';
import relationLiftCount from './relations/lift-count.ts';
import relationLiftCountAverage from './relations/lift-count-average.ts';
import relationLiftCountByThickness from './relations/lift-count-by-thickness.ts';
import relationLiftCountByThicknessAverage from './relations/lift-count-by-thickness-average.ts';
import relationLiftLoose from './relations/lift-loose.ts';
import relationLiftMass from './relations/lift-mass.ts';
import relationLiftMassThickness from './relations/lift-mass-thickness.ts';
import relationLiftMaxCoarse from './relations/lift-max-coarse.ts';
import relationLiftMaxFine from './relations/lift-max-fine.ts';
import relationLiftMin from './relations/lift-min.ts';
import relationLiftMinCoarse from './relations/lift-min-coarse.ts';
import relationLiftMinFine from './relations/lift-min-fine.ts';
import relationLiftSplit from './relations/lift-split.ts';
import relationLiftThickness from './relations/lift-thickness.ts';
import relationLiftThicknessAverage from './relations/lift-thickness-average.ts';
import relationLoadArea from './relations/load-area.ts';
import relationLoadLength from './relations/load-length.ts';
import relationLoadLengthLift from './relations/load-length-lift.ts';
import relationLoadLengthSpread from './relations/load-length-spread.ts';
import relationLoadsLeft from './relations/loads-left.ts';
import relationLongTaperSpacing from './relations/long-taper-spacing.ts';
import relationMergingTaper from './relations/merging-taper.ts';
import relationMergingTaperMetric from './relations/merging-taper-metric.ts';
import relationOneLaneLength from './relations/one-lane-length.ts';
import relationOrderLoads from './relations/order-loads.ts';
import relationPatchArea from './relations/patch-area.ts';
import relationPatchAreaCount from './relations/patch-area-count.ts';
import relationPatchDepthLifts from './relations/patch-depth-lifts.ts';
import relationPatchVolume from './relations/patch-volume.ts';
import relationPlacedDepth from './relations/placed-depth.ts';
import relationPlacedDepthLength from './relations/placed-depth-length.ts';
import relationPlacedMass from './relations/placed-mass.ts';
import relationPlacedRate from './relations/placed-rate.ts';
import relationPlacedRateLength from './relations/placed-rate-length.ts';
import relationPremixMass from './relations/premix-mass.ts';
import relationPremixMassRuts from './relations/premix-mass-ruts.ts';
import relationPremixMassSpread from './relations/premix-mass-spread.ts';
import relationPremixMassVolume from './relations/premix-mass-volume.ts';
import relationPremixOrder from './relations/premix-order.ts';
import relationPremixOrderCount from './relations/premix-order-count.ts';
import relationPremixOrderTons from './relations/premix-order-tons.ts';
import relationQueueLength from './relations/queue-length.ts';
import relationRollDown from './relations/roll-down.ts';
import relationRutLength from './relations/rut-length.ts';
import relationRutSection from './relations/rut-section.ts';
import relationRutVolume from './relations/rut-volume.ts';
import relationRutVolumeOne from './relations/rut-volume-one.ts';
import relationShiftingTaper from './relations/shifting-taper.ts';
import relationShoulderTaper from './relations/shoulder-taper.ts';
import relationSpreadRate from './relations/spread-rate.ts';
import relationSpreadRateLift from './relations/spread-rate-lift.ts';
import relationStoneSize from './relations/stone-size.ts';
import relationTableGrade from './relations/table-grade.ts';
import relationTableSpeed from './relations/table-speed.ts';
import relationTableSpeedMetric from './relations/table-speed-metric.ts';
import relationTaperNeededDownstream from './relations/taper-needed-downstream.ts';
import relationTaperNeededFlagger from './relations/taper-needed-flagger.ts';
import relationTaperNeededMerging from './relations/taper-needed-merging.ts';
import relationTaperNeededShifting from './relations/taper-needed-shifting.ts';
import relationTaperNeededShoulder from './relations/taper-needed-shoulder.ts';
import relationTonsLeft from './relations/tons-left.ts';
import relationTruckCount from './relations/truck-count.ts';
import relationUnitWeight from './relations/unit-weight.ts';
import relationWorkLength from './relations/work-length.ts';
import relationZoneLength from './relations/zone-length.ts';
import relationZoneLengthTurning from './relations/zone-length-turning.ts';
import limitBufferLength from './limits/buffer-length.ts';
import limitConeHeight from './limits/cone-height.ts';
import limitDeviceSpacing from './limits/device-spacing.ts';
import limitEndSpread from './limits/end-spread.ts';
import limitFlaggerSight from './limits/flagger-sight.ts';
import limitFullClosure from './limits/full-closure.ts';
import limitHoldTime from './limits/hold-time.ts';
import limitLiftMax from './limits/lift-max.ts';
import limitLiftMax6x from './limits/lift-max-6x.ts';
import limitLiftMax8x from './limits/lift-max-8x.ts';
import limitLiftMin from './limits/lift-min.ts';
import limitLiftMin3x from './limits/lift-min-3x.ts';
import limitLiftMin4x from './limits/lift-min-4x.ts';
import limitOpenLane from './limits/open-lane.ts';
import limitOpenLaneLeast from './limits/open-lane-least.ts';
import limitPayload from './limits/payload.ts';
import limitPilotCar from './limits/pilot-car.ts';
import limitPlacedBeforeFinish from './limits/placed-before-finish.ts';
import limitQueueRoom from './limits/queue-room.ts';
import limitSignHeight from './limits/sign-height.ts';
import limitSignSpacing from './limits/sign-spacing.ts';
import limitSpeedDrop from './limits/speed-drop.ts';
import limitStoneFitsLift from './limits/stone-fits-lift.ts';
import limitTaperLength from './limits/taper-length.ts';
import practiceAdvanceSign from './practices/advance-sign.ts';
import practiceApparel from './practices/apparel.ts';
import practiceArrowBoardMode from './practices/arrow-board-mode.ts';
import practiceBackingSpotter from './practices/backing-spotter.ts';
import practiceBufferEmpty from './practices/buffer-empty.ts';
import practiceFlaggerCount from './practices/flagger-count.ts';
import practiceFlaggerStation from './practices/flagger-station.ts';
import practiceMachineInsideLane from './practices/machine-inside-lane.ts';
import practiceNightLighting from './practices/night-lighting.ts';
import practicePoorVisibility from './practices/poor-visibility.ts';
import practiceQueueEnd from './practices/queue-end.ts';
import practiceRollEachLift from './practices/roll-each-lift.ts';
import practiceSignsTrue from './practices/signs-true.ts';
import practiceTrafficControlFirst from './practices/traffic-control-first.ts';
import practiceTrafficControlLast from './practices/traffic-control-last.ts';
import tableDowngradeColumns from './tables/downgrade-columns.ts';
import tableLargestStone from './tables/largest-stone.ts';
import tableSignSpacing from './tables/sign-spacing.ts';
import tableStoppingSight from './tables/stopping-sight.ts';
import tableStoppingSightDown3 from './tables/stopping-sight-down-3.ts';
import tableStoppingSightDown6 from './tables/stopping-sight-down-6.ts';
import tableStoppingSightDown9 from './tables/stopping-sight-down-9.ts';
import tableStoppingSightMetric from './tables/stopping-sight-metric.ts';
import stepBriefCrew from './steps/brief-crew.ts';
import stepCleanUp from './steps/clean-up.ts';
import stepCutAndClean from './steps/cut-and-clean.ts';
import stepFinalRoll from './steps/final-roll.ts';
import stepFinishLift from './steps/finish-lift.ts';
import stepFirstLift from './steps/first-lift.ts';
import stepNextLift from './steps/next-lift.ts';
import stepOrderAndCheck from './steps/order-and-check.ts';
import stepRecord from './steps/record.ts';
import stepRollLift from './steps/roll-lift.ts';
import stepSpreadPremix from './steps/spread-premix.ts';
import stepSurveyAndMark from './steps/survey-and-mark.ts';
import stepSweep from './steps/sweep.ts';
import stepTack from './steps/tack.ts';
import stepTrafficControlDown from './steps/traffic-control-down.ts';
import stepTrafficControlUp from './steps/traffic-control-up.ts';
import stepWindrow from './steps/windrow.ts';
import type { StepRecord } from './shapes-work.ts';
import type {
  ChoiceRecord,
  LimitRecord,
  PracticeRecord,
  QuantityRecord,
  RelationRecord,
  TableRecord,
} from './shapes.ts';

export const quantities: readonly QuantityRecord[] = [
  quantityAdvanceLength,
  quantityAreaPerTon,
  quantityBufferFound,
  quantityBufferLength,
  quantityClosureLength,
  quantityConeHeight,
  quantityDeepestDepth,
  quantityDeviceCount,
  quantityDeviceRun,
  quantityDeviceSpacing,
  quantityDeviceSpacingTangent,
  quantityDeviceSpacingTaper,
  quantityDownstreamTaper,
  quantityDumpSpacing,
  quantityEndSpread,
  quantityFeatherCount,
  quantityFeatherLength,
  quantityFirstLiftMass,
  quantityFlaggerSight,
  quantityFlaggerTaper,
  quantityFlaggers,
  quantityFullLength,
  quantityGrade,
  quantityLastLiftMass,
  quantityLegalPayload,
  quantityLengthPerTon,
  quantityLiftCount,
  quantityLiftLoose,
  quantityLiftMass,
  quantityLiftMax,
  quantityLiftMaxDense,
  quantityLiftMin,
  quantityLiftMinDense,
  quantityLiftSplit,
  quantityLiftThickness,
  quantityLoadArea,
  quantityLoadLength,
  quantityLoadsLeft,
  quantityLoadsPlaced,
  quantityLongTaperSpacing,
  quantityMaxSpecificGravity,
  quantityMergingTaper,
  quantityMixNominalSize,
  quantityOffset,
  quantityOneLaneLength,
  quantityOpenLaneWidth,
  quantityOrderLoads,
  quantityPatchArea,
  quantityPatchCount,
  quantityPatchDepth,
  quantityPatchLength,
  quantityPatchVolume,
  quantityPatchWidth,
  quantityPlacedDepth,
  quantityPlacedLength,
  quantityPlacedMass,
  quantityPlacedRate,
  quantityPlacedShare,
  quantityPostedSpeed,
  quantityPostedWeight,
  quantityPremixMass,
  quantityPremixOrder,
  quantityQueueLength,
  quantityQueueRoom,
  quantityRollDown,
  quantityRutCount,
  quantityRutDepth,
  quantityRutFill,
  quantityRutLength,
  quantityRutSection,
  quantityRutVolume,
  quantityRutWidth,
  quantityShiftingTaper,
  quantityShortTaperMax,
  quantityShortTaperMin,
  quantityShortTaperSpacing,
  quantityShoulderTaper,
  quantitySignDistance,
  quantitySignHeight,
  quantitySignSpacingA,
  quantitySignSpacingB,
  quantitySignSpacingC,
  quantitySpeedDrop,
  quantitySpreadRate,
  quantityStoneSize,
  quantityStopTime,
  quantityTableGrade,
  quantityTableSpeed,
  quantityTaperLength,
  quantityTaperNeeded,
  quantityTonsLeft,
  quantityTrafficVolume,
  quantityTruckCount,
  quantityTruckPayload,
  quantityTruckTare,
  quantityTurnRoom,
  quantityUnitWeight,
  quantityWaste,
  quantityWorkLength,
  quantityZoneLength,
  quantityZoneLengthTurning,
];

export const choices: readonly ChoiceRecord[] = [
  choiceAdvanceSigns,
  choiceApparel,
  choiceArrowBoard,
  choiceBacking,
  choiceBaseState,
  choiceBufferUse,
  choiceChunkLook,
  choiceConeUse,
  choiceControlRemoval,
  choiceCrackLook,
  choiceCrackState,
  choiceDefectExtent,
  choiceDefectPlace,
  choiceDevicePlace,
  choiceEdgeBreakState,
  choiceFlaggerPlace,
  choiceFlaggersPosted,
  choiceLaneEdge,
  choiceLayoutKind,
  choiceLiftRolling,
  choiceMatAge,
  choiceMixGradation,
  choiceMixKind,
  choiceNightStation,
  choiceOrderEnds,
  choicePatchEnds,
  choicePatchShape,
  choiceQueuePlace,
  choiceRecurring,
  choiceRidgePlace,
  choiceRoadType,
  choiceRutEdges,
  choiceSignGap,
  choiceSignPlace,
  choiceSignsIdle,
  choiceSoftPlace,
  choiceSpeedUnit,
  choiceStickPlace,
  choiceStreakLook,
  choiceSurface,
  choiceTackState,
  choiceTaperKind,
  choiceTrafficControlState,
  choiceTrafficLevel,
  choiceVisibility,
  choiceWaterState,
  choiceWavePlace,
  choiceWeatherState,
  choiceWorkDuration,
];

export const relations: readonly RelationRecord[] = [
  relationAdvanceLength,
  relationAreaPerTon,
  relationBufferLength,
  relationBufferLengthMetric,
  relationClosureLength,
  relationDeviceCountAsSpaced,
  relationDeviceCountTangent,
  relationDeviceCountTaper,
  relationDeviceCountTaperAsSpaced,
  relationDeviceCountTaperNeeded,
  relationDeviceSpacingShortTaper,
  relationDeviceSpacingTangent,
  relationDeviceSpacingTaper,
  relationDeviceSpacingTaperUnsaid,
  relationDumpSpacing,
  relationFeatherCount,
  relationFirstLiftMass,
  relationFullLength,
  relationFullLengthPlain,
  relationLastLiftMass,
  relationLegalPayload,
  relationLengthPerTon,
  relationLiftCount,
  relationLiftCountAverage,
  relationLiftCountByThickness,
  relationLiftCountByThicknessAverage,
  relationLiftLoose,
  relationLiftMass,
  relationLiftMassThickness,
  relationLiftMaxCoarse,
  relationLiftMaxFine,
  relationLiftMin,
  relationLiftMinCoarse,
  relationLiftMinFine,
  relationLiftSplit,
  relationLiftThickness,
  relationLiftThicknessAverage,
  relationLoadArea,
  relationLoadLength,
  relationLoadLengthLift,
  relationLoadLengthSpread,
  relationLoadsLeft,
  relationLongTaperSpacing,
  relationMergingTaper,
  relationMergingTaperMetric,
  relationOneLaneLength,
  relationOrderLoads,
  relationPatchArea,
  relationPatchAreaCount,
  relationPatchDepthLifts,
  relationPatchVolume,
  relationPlacedDepth,
  relationPlacedDepthLength,
  relationPlacedMass,
  relationPlacedRate,
  relationPlacedRateLength,
  relationPremixMass,
  relationPremixMassRuts,
  relationPremixMassSpread,
  relationPremixMassVolume,
  relationPremixOrder,
  relationPremixOrderCount,
  relationPremixOrderTons,
  relationQueueLength,
  relationRollDown,
  relationRutLength,
  relationRutSection,
  relationRutVolume,
  relationRutVolumeOne,
  relationShiftingTaper,
  relationShoulderTaper,
  relationSpreadRate,
  relationSpreadRateLift,
  relationStoneSize,
  relationTableGrade,
  relationTableSpeed,
  relationTableSpeedMetric,
  relationTaperNeededDownstream,
  relationTaperNeededFlagger,
  relationTaperNeededMerging,
  relationTaperNeededShifting,
  relationTaperNeededShoulder,
  relationTonsLeft,
  relationTruckCount,
  relationUnitWeight,
  relationWorkLength,
  relationZoneLength,
  relationZoneLengthTurning,
];

export const limits: readonly LimitRecord[] = [
  limitBufferLength,
  limitConeHeight,
  limitDeviceSpacing,
  limitEndSpread,
  limitFlaggerSight,
  limitFullClosure,
  limitHoldTime,
  limitLiftMax,
  limitLiftMax6x,
  limitLiftMax8x,
  limitLiftMin,
  limitLiftMin3x,
  limitLiftMin4x,
  limitOpenLane,
  limitOpenLaneLeast,
  limitPayload,
  limitPilotCar,
  limitPlacedBeforeFinish,
  limitQueueRoom,
  limitSignHeight,
  limitSignSpacing,
  limitSpeedDrop,
  limitStoneFitsLift,
  limitTaperLength,
];

export const practices: readonly PracticeRecord[] = [
  practiceAdvanceSign,
  practiceApparel,
  practiceArrowBoardMode,
  practiceBackingSpotter,
  practiceBufferEmpty,
  practiceFlaggerCount,
  practiceFlaggerStation,
  practiceMachineInsideLane,
  practiceNightLighting,
  practicePoorVisibility,
  practiceQueueEnd,
  practiceRollEachLift,
  practiceSignsTrue,
  practiceTrafficControlFirst,
  practiceTrafficControlLast,
];

export const tables: readonly TableRecord[] = [
  tableDowngradeColumns,
  tableLargestStone,
  tableSignSpacing,
  tableStoppingSight,
  tableStoppingSightDown3,
  tableStoppingSightDown6,
  tableStoppingSightDown9,
  tableStoppingSightMetric,
];

export const steps: readonly StepRecord[] = [
  stepBriefCrew,
  stepCleanUp,
  stepCutAndClean,
  stepFinalRoll,
  stepFinishLift,
  stepFirstLift,
  stepNextLift,
  stepOrderAndCheck,
  stepRecord,
  stepRollLift,
  stepSpreadPremix,
  stepSurveyAndMark,
  stepSweep,
  stepTack,
  stepTrafficControlDown,
  stepTrafficControlUp,
  stepWindrow,
];
