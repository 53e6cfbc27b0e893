// biome-ignore-all assist/source/organizeImports: written by `npm run generate`; do not edit.
import quantityAdvanceLength from './quantities/advance-length.ts';
import quantityAirTemperature from './quantities/air-temperature.ts';
import quantityAreaPerTon from './quantities/area-per-ton.ts';
import quantityBaseTemperature from './quantities/base-temperature.ts';
import quantityBladeAngle from './quantities/blade-angle.ts';
import quantityBladeLength from './quantities/blade-length.ts';
import quantityBladeOverlap from './quantities/blade-overlap.ts';
import quantityBladePasses from './quantities/blade-passes.ts';
import quantityBladeReach from './quantities/blade-reach.ts';
import quantityBufferFound from './quantities/buffer-found.ts';
import quantityBufferLength from './quantities/buffer-length.ts';
import quantityClosureLength from './quantities/closure-length.ts';
import quantityClosureTime from './quantities/closure-time.ts';
import quantityConeHeight from './quantities/cone-height.ts';
import quantityCoolingAir from './quantities/cooling-air.ts';
import quantityCoolingAllowance from './quantities/cooling-allowance.ts';
import quantityCostPerTon from './quantities/cost-per-ton.ts';
import quantityCrackWidth from './quantities/crack-width.ts';
import quantityCrewSize from './quantities/crew-size.ts';
import quantityCrossSlope from './quantities/cross-slope.ts';
import quantityCrownBuild from './quantities/crown-build.ts';
import quantityCrownDrop from './quantities/crown-drop.ts';
import quantityCrownWedgeDepth from './quantities/crown-wedge-depth.ts';
import quantityCrownWedgeMass from './quantities/crown-wedge-mass.ts';
import quantityCycleTime from './quantities/cycle-time.ts';
import quantityDeepestDepth from './quantities/deepest-depth.ts';
import quantityDeliveryRate from './quantities/delivery-rate.ts';
import quantityDeviceCount from './quantities/device-count.ts';
import quantityDeviceRun from './quantities/device-run.ts';
import quantityDeviceSpacing from './quantities/device-spacing.ts';
import quantityDeviceSpacingTangent from './quantities/device-spacing-tangent.ts';
import quantityDeviceSpacingTaper from './quantities/device-spacing-taper.ts';
import quantityDilution from './quantities/dilution.ts';
import quantityDistributorSpeed from './quantities/distributor-speed.ts';
import quantityDownstreamTaper from './quantities/downstream-taper.ts';
import quantityDropOffMax from './quantities/drop-off-max.ts';
import quantityDrumVibration from './quantities/drum-vibration.ts';
import quantityDrumWidth from './quantities/drum-width.ts';
import quantityDumpSpacing from './quantities/dump-spacing.ts';
import quantityEdgeDrop from './quantities/edge-drop.ts';
import quantityEdgeDropAfter from './quantities/edge-drop-after.ts';
import quantityEdgeThickness from './quantities/edge-thickness.ts';
import quantityEmulsionVolume from './quantities/emulsion-volume.ts';
import quantityEndSpread from './quantities/end-spread.ts';
import quantityEndTaperLength from './quantities/end-taper-length.ts';
import quantityEndTaperMass from './quantities/end-taper-mass.ts';
import quantityEndTaperRatio from './quantities/end-taper-ratio.ts';
import quantityEquipmentCost from './quantities/equipment-cost.ts';
import quantityEquipmentRate from './quantities/equipment-rate.ts';
import quantityFeatherCount from './quantities/feather-count.ts';
import quantityFeatherLength from './quantities/feather-length.ts';
import quantityFirstLiftMass from './quantities/first-lift-mass.ts';
import quantityFlaggerSight from './quantities/flagger-sight.ts';
import quantityFlaggerTaper from './quantities/flagger-taper.ts';
import quantityFlaggers from './quantities/flaggers.ts';
import quantityFlushHeight from './quantities/flush-height.ts';
import quantityFullLength from './quantities/full-length.ts';
import quantityGrade from './quantities/grade.ts';
import quantityGraderEfficiency from './quantities/grader-efficiency.ts';
import quantityGraderPasses from './quantities/grader-passes.ts';
import quantityGraderSpeed from './quantities/grader-speed.ts';
import quantityGradingAreaRate from './quantities/grading-area-rate.ts';
import quantityGradingTime from './quantities/grading-time.ts';
import quantityHalfDrum from './quantities/half-drum.ts';
import quantityHaulDistance from './quantities/haul-distance.ts';
import quantityHaulSpeed from './quantities/haul-speed.ts';
import quantityHaulTime from './quantities/haul-time.ts';
import quantityHotSectionLength from './quantities/hot-section-length.ts';
import quantityImpactsPerFoot from './quantities/impacts-per-foot.ts';
import quantityJobCost from './quantities/job-cost.ts';
import quantityLaborCost from './quantities/labor-cost.ts';
import quantityLaborHours from './quantities/labor-hours.ts';
import quantityLaborRate from './quantities/labor-rate.ts';
import quantityLaidAhead from './quantities/laid-ahead.ts';
import quantityLastLiftMass from './quantities/last-lift-mass.ts';
import quantityLayTime from './quantities/lay-time.ts';
import quantityLayingRate from './quantities/laying-rate.ts';
import quantityLayingTime from './quantities/laying-time.ts';
import quantityLeastPasses from './quantities/least-passes.ts';
import quantityLeftAtYield from './quantities/left-at-yield.ts';
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
import quantityLoadRollingTime from './quantities/load-rolling-time.ts';
import quantityLoadTime from './quantities/load-time.ts';
import quantityLoadsLeft from './quantities/loads-left.ts';
import quantityLoadsPlaced from './quantities/loads-placed.ts';
import quantityLongTaperSpacing from './quantities/long-taper-spacing.ts';
import quantityMassAtYield from './quantities/mass-at-yield.ts';
import quantityMatTemperature from './quantities/mat-temperature.ts';
import quantityMaterialCost from './quantities/material-cost.ts';
import quantityMaterialPrice from './quantities/material-price.ts';
import quantityMaxSpecificGravity from './quantities/max-specific-gravity.ts';
import quantityMergingTaper from './quantities/merging-taper.ts';
import quantityMixNominalSize from './quantities/mix-nominal-size.ts';
import quantityMixTemperature from './quantities/mix-temperature.ts';
import quantityOffset from './quantities/offset.ts';
import quantityOldCrossSlope from './quantities/old-cross-slope.ts';
import quantityOneLaneLength from './quantities/one-lane-length.ts';
import quantityOpenLaneWidth from './quantities/open-lane-width.ts';
import quantityOrderCost from './quantities/order-cost.ts';
import quantityOrderLoads from './quantities/order-loads.ts';
import quantityPadArea from './quantities/pad-area.ts';
import quantityPadMass from './quantities/pad-mass.ts';
import quantityPatchArea from './quantities/patch-area.ts';
import quantityPatchCount from './quantities/patch-count.ts';
import quantityPatchDepth from './quantities/patch-depth.ts';
import quantityPatchLength from './quantities/patch-length.ts';
import quantityPatchLoose from './quantities/patch-loose.ts';
import quantityPatchVolume from './quantities/patch-volume.ts';
import quantityPatchVolumeSimpson from './quantities/patch-volume-simpson.ts';
import quantityPatchWidth from './quantities/patch-width.ts';
import quantityPlacedDepth from './quantities/placed-depth.ts';
import quantityPlacedLength from './quantities/placed-length.ts';
import quantityPlacedMass from './quantities/placed-mass.ts';
import quantityPlacedRate from './quantities/placed-rate.ts';
import quantityPlacedShare from './quantities/placed-share.ts';
import quantityPostedSpeed from './quantities/posted-speed.ts';
import quantityPostedWeight from './quantities/posted-weight.ts';
import quantityPotholeDepth from './quantities/pothole-depth.ts';
import quantityPotholeWidth from './quantities/pothole-width.ts';
import quantityPremixMass from './quantities/premix-mass.ts';
import quantityPremixOrder from './quantities/premix-order.ts';
import quantityPumpRate from './quantities/pump-rate.ts';
import quantityQueueLength from './quantities/queue-length.ts';
import quantityQueueRoom from './quantities/queue-room.ts';
import quantityReadingSpacing from './quantities/reading-spacing.ts';
import quantityResidue from './quantities/residue.ts';
import quantityReturnSpeed from './quantities/return-speed.ts';
import quantityRollDown from './quantities/roll-down.ts';
import quantityRollerCoverages from './quantities/roller-coverages.ts';
import quantityRollerEfficiency from './quantities/roller-efficiency.ts';
import quantityRollerLanes from './quantities/roller-lanes.ts';
import quantityRollerLimitedRate from './quantities/roller-limited-rate.ts';
import quantityRollerOverhang from './quantities/roller-overhang.ts';
import quantityRollerOverlap from './quantities/roller-overlap.ts';
import quantityRollerPasses from './quantities/roller-passes.ts';
import quantityRollerSpeed from './quantities/roller-speed.ts';
import quantityRollersNeeded from './quantities/rollers-needed.ts';
import quantityRollersOnJob from './quantities/rollers-on-job.ts';
import quantityRollingAreaRate from './quantities/rolling-area-rate.ts';
import quantityRollingRate from './quantities/rolling-rate.ts';
import quantityRollingRateAll from './quantities/rolling-rate-all.ts';
import quantityRollingStopTemperature from './quantities/rolling-stop-temperature.ts';
import quantityRollingTime from './quantities/rolling-time.ts';
import quantityRollingTimeTotal from './quantities/rolling-time-total.ts';
import quantityRowDepth from './quantities/row-depth.ts';
import quantityRowLoose from './quantities/row-loose.ts';
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
import quantityShoulderZoneLength from './quantities/shoulder-zone-length.ts';
import quantitySideSlope from './quantities/side-slope.ts';
import quantitySignDistance from './quantities/sign-distance.ts';
import quantitySignHeight from './quantities/sign-height.ts';
import quantitySignNearestLeast from './quantities/sign-nearest-least.ts';
import quantitySignNearestMost from './quantities/sign-nearest-most.ts';
import quantitySignSpacingA from './quantities/sign-spacing-a.ts';
import quantitySignSpacingB from './quantities/sign-spacing-b.ts';
import quantitySignSpacingC from './quantities/sign-spacing-c.ts';
import quantitySpeedDrop from './quantities/speed-drop.ts';
import quantitySprayTemperatureLeast from './quantities/spray-temperature-least.ts';
import quantitySprayTemperatureMost from './quantities/spray-temperature-most.ts';
import quantitySprayWidth from './quantities/spray-width.ts';
import quantitySpreadRate from './quantities/spread-rate.ts';
import quantityStickAfter from './quantities/stick-after.ts';
import quantityStickBefore from './quantities/stick-before.ts';
import quantityStoneSize from './quantities/stone-size.ts';
import quantityStopTime from './quantities/stop-time.ts';
import quantityStraightedgeGap from './quantities/straightedge-gap.ts';
import quantityStraightedgeLength from './quantities/straightedge-length.ts';
import quantitySurfaceTemperature from './quantities/surface-temperature.ts';
import quantityTableGrade from './quantities/table-grade.ts';
import quantityTableSpeed from './quantities/table-speed.ts';
import quantityTackArea from './quantities/tack-area.ts';
import quantityTackCoats from './quantities/tack-coats.ts';
import quantityTackCost from './quantities/tack-cost.ts';
import quantityTackMass from './quantities/tack-mass.ts';
import quantityTackOrder from './quantities/tack-order.ts';
import quantityTackRate from './quantities/tack-rate.ts';
import quantityTackRate60 from './quantities/tack-rate-60.ts';
import quantityTackResidual from './quantities/tack-residual.ts';
import quantityTackRunLength from './quantities/tack-run-length.ts';
import quantityTackTemperature from './quantities/tack-temperature.ts';
import quantityTackUsed from './quantities/tack-used.ts';
import quantityTackVolume from './quantities/tack-volume.ts';
import quantityTackVolume60 from './quantities/tack-volume-60.ts';
import quantityTackVolumeFactor from './quantities/tack-volume-factor.ts';
import quantityTackWeight from './quantities/tack-weight.ts';
import quantityTankTime from './quantities/tank-time.ts';
import quantityTankVolume from './quantities/tank-volume.ts';
import quantityTaperLength from './quantities/taper-length.ts';
import quantityTaperNeeded from './quantities/taper-needed.ts';
import quantityTimeToRoll from './quantities/time-to-roll.ts';
import quantityTonsLeft from './quantities/tons-left.ts';
import quantityTrafficVolume from './quantities/traffic-volume.ts';
import quantityTripsPerTruck from './quantities/trips-per-truck.ts';
import quantityTruckCount from './quantities/truck-count.ts';
import quantityTruckPayload from './quantities/truck-payload.ts';
import quantityTruckSpacing from './quantities/truck-spacing.ts';
import quantityTruckTare from './quantities/truck-tare.ts';
import quantityTrucksNeeded from './quantities/trucks-needed.ts';
import quantityTrucksOnJob from './quantities/trucks-on-job.ts';
import quantityTurnRoom from './quantities/turn-room.ts';
import quantityTurnTime from './quantities/turn-time.ts';
import quantityTurnout from './quantities/turnout.ts';
import quantityUnitWeight from './quantities/unit-weight.ts';
import quantityUnloadTime from './quantities/unload-time.ts';
import quantityWaitTime from './quantities/wait-time.ts';
import quantityWaste from './quantities/waste.ts';
import quantityWaterVolume from './quantities/water-volume.ts';
import quantityWindSpeed from './quantities/wind-speed.ts';
import quantityWindrowBase from './quantities/windrow-base.ts';
import quantityWindrowHeight from './quantities/windrow-height.ts';
import quantityWindrowLength from './quantities/windrow-length.ts';
import quantityWindrowMassPer100ft from './quantities/windrow-mass-per-100ft.ts';
import quantityWindrowSection from './quantities/windrow-section.ts';
import quantityWindrowSectionAll from './quantities/windrow-section-all.ts';
import quantityWindrowTop from './quantities/windrow-top.ts';
import quantityWorkDistance from './quantities/work-distance.ts';
import quantityWorkHours from './quantities/work-hours.ts';
import quantityWorkLength from './quantities/work-length.ts';
import quantityWorkZone from './quantities/work-zone.ts';
import quantityZoneDevices from './quantities/zone-devices.ts';
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
import choiceDefect from './choices/defect.ts';
import choiceDefectExtent from './choices/defect-extent.ts';
import choiceDefectPlace from './choices/defect-place.ts';
import choiceDevicePlace from './choices/device-place.ts';
import choiceDrumMode from './choices/drum-mode.ts';
import choiceEdgeBreakState from './choices/edge-break-state.ts';
import choiceEdgeSupport from './choices/edge-support.ts';
import choiceFlaggerPlace from './choices/flagger-place.ts';
import choiceFlaggersPosted from './choices/flaggers-posted.ts';
import choiceLaneEdge from './choices/lane-edge.ts';
import choiceLayoutKind from './choices/layout-kind.ts';
import choiceLiftRolling from './choices/lift-rolling.ts';
import choiceMatState from './choices/mat-state.ts';
import choiceMixGradation from './choices/mix-gradation.ts';
import choiceMixKind from './choices/mix-kind.ts';
import choiceNightStation from './choices/night-station.ts';
import choiceOrderEnds from './choices/order-ends.ts';
import choiceOvernightState from './choices/overnight-state.ts';
import choicePatchShape from './choices/patch-shape.ts';
import choiceQueuePlace from './choices/queue-place.ts';
import choiceRavelState from './choices/ravel-state.ts';
import choiceRecurring from './choices/recurring.ts';
import choiceRidgePlace from './choices/ridge-place.ts';
import choiceRoadShape from './choices/road-shape.ts';
import choiceRoadType from './choices/road-type.ts';
import choiceRollingDirection from './choices/rolling-direction.ts';
import choiceRowEnd from './choices/row-end.ts';
import choiceRutEdges from './choices/rut-edges.ts';
import choiceRutRolling from './choices/rut-rolling.ts';
import choiceSeatBelt from './choices/seat-belt.ts';
import choiceSignGap from './choices/sign-gap.ts';
import choiceSignPlace from './choices/sign-place.ts';
import choiceSignsIdle from './choices/signs-idle.ts';
import choiceSoftPlace from './choices/soft-place.ts';
import choiceSpeedUnit from './choices/speed-unit.ts';
import choiceStickPlace from './choices/stick-place.ts';
import choiceStraightedgeWay from './choices/straightedge-way.ts';
import choiceStreakLook from './choices/streak-look.ts';
import choiceSurface from './choices/surface.ts';
import choiceSurfaceState from './choices/surface-state.ts';
import choiceTackGrade from './choices/tack-grade.ts';
import choiceTackKind from './choices/tack-kind.ts';
import choiceTackState from './choices/tack-state.ts';
import choiceTankWater from './choices/tank-water.ts';
import choiceTaperKind from './choices/taper-kind.ts';
import choiceTemperatureTrend from './choices/temperature-trend.ts';
import choiceTrafficControlState from './choices/traffic-control-state.ts';
import choiceTrafficLevel from './choices/traffic-level.ts';
import choiceVisibility from './choices/visibility.ts';
import choiceWastePlace from './choices/waste-place.ts';
import choiceWaterState from './choices/water-state.ts';
import choiceWavePlace from './choices/wave-place.ts';
import choiceWeatherState from './choices/weather-state.ts';
import choiceWindrowPlace from './choices/windrow-place.ts';
import choiceWindrowShape from './choices/windrow-shape.ts';
import choiceWorkDuration from './choices/work-duration.ts';
import relationAdvanceLength from './relations/advance-length.ts';
import relationAreaPerTon from './relations/area-per-ton.ts';
import relationBaseTemperature from './relations/base-temperature.ts';
import relationBaseTemperatureAir from './relations/base-temperature-air.ts';
import relationBladePasses from './relations/blade-passes.ts';
import relationBladeReach from './relations/blade-reach.ts';
import relationBufferLength from './relations/buffer-length.ts';
import relationBufferLengthMetric from './relations/buffer-length-metric.ts';
import relationClosureLength from './relations/closure-length.ts';
import relationCoolingAir from './relations/cooling-air.ts';
import relationCoolingAirBase from './relations/cooling-air-base.ts';
import relationCostPerTon from './relations/cost-per-ton.ts';
import relationCostPerTonPlaced from './relations/cost-per-ton-placed.ts';
import relationCrownBuild from './relations/crown-build.ts';
import relationCrownDrop from './relations/crown-drop.ts';
import relationCrownWedgeDepth from './relations/crown-wedge-depth.ts';
import relationCrownWedgeMass from './relations/crown-wedge-mass.ts';
import relationCycleTime from './relations/cycle-time.ts';
import relationCycleTimeByHaul from './relations/cycle-time-by-haul.ts';
import relationDeliveryRate from './relations/delivery-rate.ts';
import relationDeviceCountAsSpaced from './relations/device-count-as-spaced.ts';
import relationDeviceCountTangent from './relations/device-count-tangent.ts';
import relationDeviceCountTaper from './relations/device-count-taper.ts';
import relationDeviceCountTaperAsSpaced from './relations/device-count-taper-as-spaced.ts';
import relationDeviceCountTaperNeeded from './relations/device-count-taper-needed.ts';
import relationDeviceSpacingShortTaper from './relations/device-spacing-short-taper.ts';
import relationDeviceSpacingTangent from './relations/device-spacing-tangent.ts';
import relationDeviceSpacingTaper from './relations/device-spacing-taper.ts';
import relationDeviceSpacingTaperUnsaid from './relations/device-spacing-taper-unsaid.ts';
import relationDistributorSpeed from './relations/distributor-speed.ts';
import relationDownstreamTaperLaidOut from './relations/downstream-taper-laid-out.ts';
import relationDumpSpacing from './relations/dump-spacing.ts';
import relationEdgeDropAfter from './relations/edge-drop-after.ts';
import relationEmulsionVolume from './relations/emulsion-volume.ts';
import relationEndTaperLength from './relations/end-taper-length.ts';
import relationEndTaperLengthLift from './relations/end-taper-length-lift.ts';
import relationEndTaperMass from './relations/end-taper-mass.ts';
import relationEquipmentCost from './relations/equipment-cost.ts';
import relationFirstLiftMass from './relations/first-lift-mass.ts';
import relationFlaggerTaperLaidOut from './relations/flagger-taper-laid-out.ts';
import relationFullLength from './relations/full-length.ts';
import relationFullLengthBoth from './relations/full-length-both.ts';
import relationFullLengthPlain from './relations/full-length-plain.ts';
import relationGraderPasses from './relations/grader-passes.ts';
import relationGradingAreaRate from './relations/grading-area-rate.ts';
import relationGradingTime from './relations/grading-time.ts';
import relationGradingTimeTurns from './relations/grading-time-turns.ts';
import relationHalfDrum from './relations/half-drum.ts';
import relationHotSectionLength from './relations/hot-section-length.ts';
import relationImpactsPerFoot from './relations/impacts-per-foot.ts';
import relationJobCost from './relations/job-cost.ts';
import relationJobCostMixLabor from './relations/job-cost-mix-labor.ts';
import relationJobCostNoTack from './relations/job-cost-no-tack.ts';
import relationLaborCost from './relations/labor-cost.ts';
import relationLaborHours from './relations/labor-hours.ts';
import relationLastLiftMass from './relations/last-lift-mass.ts';
import relationLayTime from './relations/lay-time.ts';
import relationLayingRatePlaced from './relations/laying-rate-placed.ts';
import relationLayingTime from './relations/laying-time.ts';
import relationLeastPasses from './relations/least-passes.ts';
import relationLeftAtYield from './relations/left-at-yield.ts';
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
import relationLoadRollingTime from './relations/load-rolling-time.ts';
import relationLoadsLeft from './relations/loads-left.ts';
import relationLongTaperSpacing from './relations/long-taper-spacing.ts';
import relationMassAtYield from './relations/mass-at-yield.ts';
import relationMaterialCost from './relations/material-cost.ts';
import relationMergingTaper from './relations/merging-taper.ts';
import relationMergingTaperMetric from './relations/merging-taper-metric.ts';
import relationOneLaneLength from './relations/one-lane-length.ts';
import relationOrderCost from './relations/order-cost.ts';
import relationOrderLoads from './relations/order-loads.ts';
import relationPatchArea from './relations/patch-area.ts';
import relationPatchAreaCount from './relations/patch-area-count.ts';
import relationPatchDepthLifts from './relations/patch-depth-lifts.ts';
import relationPatchLoose from './relations/patch-loose.ts';
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
import relationResidueAsphalt from './relations/residue-asphalt.ts';
import relationReturnSpeed from './relations/return-speed.ts';
import relationRollDown from './relations/roll-down.ts';
import relationRollerLanes from './relations/roller-lanes.ts';
import relationRollerLimitedRate from './relations/roller-limited-rate.ts';
import relationRollerPasses from './relations/roller-passes.ts';
import relationRollersNeeded from './relations/rollers-needed.ts';
import relationRollingAreaRate from './relations/rolling-area-rate.ts';
import relationRollingRate from './relations/rolling-rate.ts';
import relationRollingRateAll from './relations/rolling-rate-all.ts';
import relationRollingTime from './relations/rolling-time.ts';
import relationRollingTimeTotal from './relations/rolling-time-total.ts';
import relationRowDepth from './relations/row-depth.ts';
import relationRowDepthWeighed from './relations/row-depth-weighed.ts';
import relationRutLength from './relations/rut-length.ts';
import relationRutSection from './relations/rut-section.ts';
import relationRutVolume from './relations/rut-volume.ts';
import relationRutVolumeOne from './relations/rut-volume-one.ts';
import relationShiftingTaper from './relations/shifting-taper.ts';
import relationShoulderTaper from './relations/shoulder-taper.ts';
import relationShoulderZoneLength from './relations/shoulder-zone-length.ts';
import relationSignNearestLeastRural from './relations/sign-nearest-least-rural.ts';
import relationSignNearestLeastUrban from './relations/sign-nearest-least-urban.ts';
import relationSignNearestMostRural from './relations/sign-nearest-most-rural.ts';
import relationSignNearestMostUrban from './relations/sign-nearest-most-urban.ts';
import relationSprayWidth from './relations/spray-width.ts';
import relationSpreadRate from './relations/spread-rate.ts';
import relationSpreadRateLift from './relations/spread-rate-lift.ts';
import relationStoneSize from './relations/stone-size.ts';
import relationTableGrade from './relations/table-grade.ts';
import relationTableSpeed from './relations/table-speed.ts';
import relationTableSpeedMetric from './relations/table-speed-metric.ts';
import relationTackArea from './relations/tack-area.ts';
import relationTackAreaShot from './relations/tack-area-shot.ts';
import relationTackMass from './relations/tack-mass.ts';
import relationTackOrder from './relations/tack-order.ts';
import relationTackRate from './relations/tack-rate.ts';
import relationTackRate60 from './relations/tack-rate-60.ts';
import relationTackRatePad from './relations/tack-rate-pad.ts';
import relationTackRateUsed from './relations/tack-rate-used.ts';
import relationTackRunLength from './relations/tack-run-length.ts';
import relationTackUsed from './relations/tack-used.ts';
import relationTackUsedFromTank from './relations/tack-used-from-tank.ts';
import relationTackVolume from './relations/tack-volume.ts';
import relationTackVolume60 from './relations/tack-volume-60.ts';
import relationTackVolume60Tank from './relations/tack-volume-60-tank.ts';
import relationTackVolume60Used from './relations/tack-volume-60-used.ts';
import relationTackVolumeFactorAsphalt from './relations/tack-volume-factor-asphalt.ts';
import relationTackVolumeFactorCutback from './relations/tack-volume-factor-cutback.ts';
import relationTackVolumeFactorEmulsion from './relations/tack-volume-factor-emulsion.ts';
import relationTankTime from './relations/tank-time.ts';
import relationTaperLengthFlagger from './relations/taper-length-flagger.ts';
import relationTaperNeededDownstream from './relations/taper-needed-downstream.ts';
import relationTaperNeededFlagger from './relations/taper-needed-flagger.ts';
import relationTaperNeededMerging from './relations/taper-needed-merging.ts';
import relationTaperNeededShifting from './relations/taper-needed-shifting.ts';
import relationTaperNeededShoulder from './relations/taper-needed-shoulder.ts';
import relationTimeToRoll from './relations/time-to-roll.ts';
import relationTonsLeft from './relations/tons-left.ts';
import relationTripsPerTruck from './relations/trips-per-truck.ts';
import relationTruckCount from './relations/truck-count.ts';
import relationTruckSpacing from './relations/truck-spacing.ts';
import relationTrucksNeeded from './relations/trucks-needed.ts';
import relationUnitWeight from './relations/unit-weight.ts';
import relationWaterVolume from './relations/water-volume.ts';
import relationWindrowBase from './relations/windrow-base.ts';
import relationWindrowHeight from './relations/windrow-height.ts';
import relationWindrowLength from './relations/windrow-length.ts';
import relationWindrowLengthWeighed from './relations/windrow-length-weighed.ts';
import relationWindrowMassAll from './relations/windrow-mass-all.ts';
import relationWindrowMassPer100ft from './relations/windrow-mass-per-100ft.ts';
import relationWindrowSection from './relations/windrow-section.ts';
import relationWindrowSectionAll from './relations/windrow-section-all.ts';
import relationWindrowSectionParabola from './relations/windrow-section-parabola.ts';
import relationWindrowSectionTrapezoid from './relations/windrow-section-trapezoid.ts';
import relationWindrowSectionTriangle from './relations/windrow-section-triangle.ts';
import relationWindrowSectionWeighed from './relations/windrow-section-weighed.ts';
import relationWindrowSectionWhole from './relations/windrow-section-whole.ts';
import relationWorkDistance from './relations/work-distance.ts';
import relationWorkLength from './relations/work-length.ts';
import relationWorkZoneFlaggers from './relations/work-zone-flaggers.ts';
import relationWorkZoneLaneClosed from './relations/work-zone-lane-closed.ts';
import relationWorkZoneShoulder from './relations/work-zone-shoulder.ts';
import relationZoneDevicesFlaggers from './relations/zone-devices-flaggers.ts';
import relationZoneDevicesLaneClosed from './relations/zone-devices-lane-closed.ts';
import relationZoneDevicesShoulder from './relations/zone-devices-shoulder.ts';
import relationZoneLength from './relations/zone-length.ts';
import relationZoneLengthTurning from './relations/zone-length-turning.ts';
import limitAirTemperature from './limits/air-temperature.ts';
import limitBufferLength from './limits/buffer-length.ts';
import limitConeHeight from './limits/cone-height.ts';
import limitCutbackUndiluted from './limits/cutback-undiluted.ts';
import limitDeviceSpacing from './limits/device-spacing.ts';
import limitDilutionOnce from './limits/dilution-once.ts';
import limitDropOff from './limits/drop-off.ts';
import limitDropOffAfter from './limits/drop-off-after.ts';
import limitDropOffSchedule from './limits/drop-off-schedule.ts';
import limitEndSpread from './limits/end-spread.ts';
import limitFewestPasses from './limits/fewest-passes.ts';
import limitFlaggerSight from './limits/flagger-sight.ts';
import limitFlushFinish from './limits/flush-finish.ts';
import limitFullClosure from './limits/full-closure.ts';
import limitHoldTime from './limits/hold-time.ts';
import limitHotSection from './limits/hot-section.ts';
import limitImpactsPerFoot from './limits/impacts-per-foot.ts';
import limitLaySpeed from './limits/lay-speed.ts';
import limitLiftMax from './limits/lift-max.ts';
import limitLiftMax6x from './limits/lift-max-6x.ts';
import limitLiftMax8x from './limits/lift-max-8x.ts';
import limitLiftMin from './limits/lift-min.ts';
import limitLiftMin3x from './limits/lift-min-3x.ts';
import limitLiftMin4x from './limits/lift-min-4x.ts';
import limitOneLaneAtATime from './limits/one-lane-at-a-time.ts';
import limitOpenCool from './limits/open-cool.ts';
import limitOpenLane from './limits/open-lane.ts';
import limitOpenLaneLeast from './limits/open-lane-least.ts';
import limitOvernightRamp from './limits/overnight-ramp.ts';
import limitPayload from './limits/payload.ts';
import limitPilotCar from './limits/pilot-car.ts';
import limitPlacedBeforeFinish from './limits/placed-before-finish.ts';
import limitQueueRoom from './limits/queue-room.ts';
import limitRollerKeepsUp from './limits/roller-keeps-up.ts';
import limitRollerOverlap from './limits/roller-overlap.ts';
import limitRollerOverlapFlorida from './limits/roller-overlap-florida.ts';
import limitRollerPace from './limits/roller-pace.ts';
import limitRollerSpeed from './limits/roller-speed.ts';
import limitSignHeight from './limits/sign-height.ts';
import limitSignSpacing from './limits/sign-spacing.ts';
import limitSpeedDrop from './limits/speed-drop.ts';
import limitSprayTemperature from './limits/spray-temperature.ts';
import limitStaticThinLift from './limits/static-thin-lift.ts';
import limitStoneFitsLift from './limits/stone-fits-lift.ts';
import limitStraightedge from './limits/straightedge.ts';
import limitSurfaceTemperature from './limits/surface-temperature.ts';
import limitTackRate from './limits/tack-rate.ts';
import limitTaperLength from './limits/taper-length.ts';
import limitTurnoutDistance from './limits/turnout-distance.ts';
import practiceAdvanceSign from './practices/advance-sign.ts';
import practiceApparel from './practices/apparel.ts';
import practiceArrowBoardMode from './practices/arrow-board-mode.ts';
import practiceBackingSpotter from './practices/backing-spotter.ts';
import practiceBufferEmpty from './practices/buffer-empty.ts';
import practiceDrumBridgesRut from './practices/drum-bridges-rut.ts';
import practiceFlaggerCount from './practices/flagger-count.ts';
import practiceFlaggerStation from './practices/flagger-station.ts';
import practiceMachineInsideLane from './practices/machine-inside-lane.ts';
import practiceMaterialRunOut from './practices/material-run-out.ts';
import practiceNightLighting from './practices/night-lighting.ts';
import practiceNoRain from './practices/no-rain.ts';
import practiceNoWaterInCutback from './practices/no-water-in-cutback.ts';
import practiceOpenToTraffic from './practices/open-to-traffic.ts';
import practiceOvernight from './practices/overnight.ts';
import practicePoorVisibility from './practices/poor-visibility.ts';
import practiceQueueEnd from './practices/queue-end.ts';
import practiceRollEachLift from './practices/roll-each-lift.ts';
import practiceRollLowToHigh from './practices/roll-low-to-high.ts';
import practiceRollerBelt from './practices/roller-belt.ts';
import practiceRollerEdge from './practices/roller-edge.ts';
import practiceSignsTrue from './practices/signs-true.ts';
import practiceTackCleanDry from './practices/tack-clean-dry.ts';
import practiceTackSet from './practices/tack-set.ts';
import practiceTemperatureTrend from './practices/temperature-trend.ts';
import practiceTrafficControlFirst from './practices/traffic-control-first.ts';
import practiceTrafficControlLast from './practices/traffic-control-last.ts';
import practiceWasteDisposal from './practices/waste-disposal.ts';
import practiceWindrowSide from './practices/windrow-side.ts';
import practiceWorkDuration from './practices/work-duration.ts';
import tableDowngradeColumns from './tables/downgrade-columns.ts';
import tableLargestStone from './tables/largest-stone.ts';
import tableSignSpacing from './tables/sign-spacing.ts';
import tableSprayTemperature from './tables/spray-temperature.ts';
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
import faultBarStreak from './faults/bar-streak.ts';
import faultBleeding from './faults/bleeding.ts';
import faultCenterHump from './faults/center-hump.ts';
import faultChunks from './faults/chunks.ts';
import faultColdLoad from './faults/cold-load.ts';
import faultDragMarks from './faults/drag-marks.ts';
import faultEndBump from './faults/end-bump.ts';
import faultFailureReturns from './faults/failure-returns.ts';
import faultJointOpen from './faults/joint-open.ts';
import faultLowPatch from './faults/low-patch.ts';
import faultPickup from './faults/pickup.ts';
import faultPileAtEnd from './faults/pile-at-end.ts';
import faultPonding from './faults/ponding.ts';
import faultPushing from './faults/pushing.ts';
import faultRainedOnTack from './faults/rained-on-tack.ts';
import faultRaveling from './faults/raveling.ts';
import faultRidge from './faults/ridge.ts';
import faultRollerCracks from './faults/roller-cracks.ts';
import faultRollerMarks from './faults/roller-marks.ts';
import faultRunsShort from './faults/runs-short.ts';
import faultScallops from './faults/scallops.ts';
import faultSegregation from './faults/segregation.ts';
import faultSlippage from './faults/slippage.ts';
import faultSoftSpot from './faults/soft-spot.ts';
import faultSpillUnderWheels from './faults/spill-under-wheels.ts';
import faultTackTracking from './faults/tack-tracking.ts';
import faultTearing from './faults/tearing.ts';
import faultThinEdge from './faults/thin-edge.ts';
import faultWashboards from './faults/washboards.ts';
import faultWheelRidges from './faults/wheel-ridges.ts';
import repairBladePatch from './repairs/blade-patch.ts';
import repairBlotOrMill from './repairs/blot-or-mill.ts';
import repairCrackSeal from './repairs/crack-seal.ts';
import repairCutThenBlade from './repairs/cut-then-blade.ts';
import repairDigOut from './repairs/dig-out.ts';
import repairEngineer from './repairs/engineer.ts';
import repairFixDrainageFirst from './repairs/fix-drainage-first.ts';
import repairHandPatch from './repairs/hand-patch.ts';
import repairShoulderPull from './repairs/shoulder-pull.ts';
import repairSurfaceSeal from './repairs/surface-seal.ts';
import repairWatchIt from './repairs/watch-it.ts';
import defectAlligatorCracking from './defects/alligator-cracking.ts';
import defectBleeding from './defects/bleeding.ts';
import defectDepression from './defects/depression.ts';
import defectDropOff from './defects/drop-off.ts';
import defectEdgeBreak from './defects/edge-break.ts';
import defectPothole from './defects/pothole.ts';
import defectRaveling from './defects/raveling.ts';
import defectRutting from './defects/rutting.ts';
import defectShoving from './defects/shoving.ts';
import defectSingleCracks from './defects/single-cracks.ts';
import defectSlippage from './defects/slippage.ts';
import defectSoftBase from './defects/soft-base.ts';
import type { DefectRecord, FaultRecord, RepairRecord, StepRecord } from './shapes-work.ts';
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
  quantityAirTemperature,
  quantityAreaPerTon,
  quantityBaseTemperature,
  quantityBladeAngle,
  quantityBladeLength,
  quantityBladeOverlap,
  quantityBladePasses,
  quantityBladeReach,
  quantityBufferFound,
  quantityBufferLength,
  quantityClosureLength,
  quantityClosureTime,
  quantityConeHeight,
  quantityCoolingAir,
  quantityCoolingAllowance,
  quantityCostPerTon,
  quantityCrackWidth,
  quantityCrewSize,
  quantityCrossSlope,
  quantityCrownBuild,
  quantityCrownDrop,
  quantityCrownWedgeDepth,
  quantityCrownWedgeMass,
  quantityCycleTime,
  quantityDeepestDepth,
  quantityDeliveryRate,
  quantityDeviceCount,
  quantityDeviceRun,
  quantityDeviceSpacing,
  quantityDeviceSpacingTangent,
  quantityDeviceSpacingTaper,
  quantityDilution,
  quantityDistributorSpeed,
  quantityDownstreamTaper,
  quantityDropOffMax,
  quantityDrumVibration,
  quantityDrumWidth,
  quantityDumpSpacing,
  quantityEdgeDrop,
  quantityEdgeDropAfter,
  quantityEdgeThickness,
  quantityEmulsionVolume,
  quantityEndSpread,
  quantityEndTaperLength,
  quantityEndTaperMass,
  quantityEndTaperRatio,
  quantityEquipmentCost,
  quantityEquipmentRate,
  quantityFeatherCount,
  quantityFeatherLength,
  quantityFirstLiftMass,
  quantityFlaggerSight,
  quantityFlaggerTaper,
  quantityFlaggers,
  quantityFlushHeight,
  quantityFullLength,
  quantityGrade,
  quantityGraderEfficiency,
  quantityGraderPasses,
  quantityGraderSpeed,
  quantityGradingAreaRate,
  quantityGradingTime,
  quantityHalfDrum,
  quantityHaulDistance,
  quantityHaulSpeed,
  quantityHaulTime,
  quantityHotSectionLength,
  quantityImpactsPerFoot,
  quantityJobCost,
  quantityLaborCost,
  quantityLaborHours,
  quantityLaborRate,
  quantityLaidAhead,
  quantityLastLiftMass,
  quantityLayTime,
  quantityLayingRate,
  quantityLayingTime,
  quantityLeastPasses,
  quantityLeftAtYield,
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
  quantityLoadRollingTime,
  quantityLoadTime,
  quantityLoadsLeft,
  quantityLoadsPlaced,
  quantityLongTaperSpacing,
  quantityMassAtYield,
  quantityMatTemperature,
  quantityMaterialCost,
  quantityMaterialPrice,
  quantityMaxSpecificGravity,
  quantityMergingTaper,
  quantityMixNominalSize,
  quantityMixTemperature,
  quantityOffset,
  quantityOldCrossSlope,
  quantityOneLaneLength,
  quantityOpenLaneWidth,
  quantityOrderCost,
  quantityOrderLoads,
  quantityPadArea,
  quantityPadMass,
  quantityPatchArea,
  quantityPatchCount,
  quantityPatchDepth,
  quantityPatchLength,
  quantityPatchLoose,
  quantityPatchVolume,
  quantityPatchVolumeSimpson,
  quantityPatchWidth,
  quantityPlacedDepth,
  quantityPlacedLength,
  quantityPlacedMass,
  quantityPlacedRate,
  quantityPlacedShare,
  quantityPostedSpeed,
  quantityPostedWeight,
  quantityPotholeDepth,
  quantityPotholeWidth,
  quantityPremixMass,
  quantityPremixOrder,
  quantityPumpRate,
  quantityQueueLength,
  quantityQueueRoom,
  quantityReadingSpacing,
  quantityResidue,
  quantityReturnSpeed,
  quantityRollDown,
  quantityRollerCoverages,
  quantityRollerEfficiency,
  quantityRollerLanes,
  quantityRollerLimitedRate,
  quantityRollerOverhang,
  quantityRollerOverlap,
  quantityRollerPasses,
  quantityRollerSpeed,
  quantityRollersNeeded,
  quantityRollersOnJob,
  quantityRollingAreaRate,
  quantityRollingRate,
  quantityRollingRateAll,
  quantityRollingStopTemperature,
  quantityRollingTime,
  quantityRollingTimeTotal,
  quantityRowDepth,
  quantityRowLoose,
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
  quantityShoulderZoneLength,
  quantitySideSlope,
  quantitySignDistance,
  quantitySignHeight,
  quantitySignNearestLeast,
  quantitySignNearestMost,
  quantitySignSpacingA,
  quantitySignSpacingB,
  quantitySignSpacingC,
  quantitySpeedDrop,
  quantitySprayTemperatureLeast,
  quantitySprayTemperatureMost,
  quantitySprayWidth,
  quantitySpreadRate,
  quantityStickAfter,
  quantityStickBefore,
  quantityStoneSize,
  quantityStopTime,
  quantityStraightedgeGap,
  quantityStraightedgeLength,
  quantitySurfaceTemperature,
  quantityTableGrade,
  quantityTableSpeed,
  quantityTackArea,
  quantityTackCoats,
  quantityTackCost,
  quantityTackMass,
  quantityTackOrder,
  quantityTackRate,
  quantityTackRate60,
  quantityTackResidual,
  quantityTackRunLength,
  quantityTackTemperature,
  quantityTackUsed,
  quantityTackVolume,
  quantityTackVolume60,
  quantityTackVolumeFactor,
  quantityTackWeight,
  quantityTankTime,
  quantityTankVolume,
  quantityTaperLength,
  quantityTaperNeeded,
  quantityTimeToRoll,
  quantityTonsLeft,
  quantityTrafficVolume,
  quantityTripsPerTruck,
  quantityTruckCount,
  quantityTruckPayload,
  quantityTruckSpacing,
  quantityTruckTare,
  quantityTrucksNeeded,
  quantityTrucksOnJob,
  quantityTurnRoom,
  quantityTurnTime,
  quantityTurnout,
  quantityUnitWeight,
  quantityUnloadTime,
  quantityWaitTime,
  quantityWaste,
  quantityWaterVolume,
  quantityWindSpeed,
  quantityWindrowBase,
  quantityWindrowHeight,
  quantityWindrowLength,
  quantityWindrowMassPer100ft,
  quantityWindrowSection,
  quantityWindrowSectionAll,
  quantityWindrowTop,
  quantityWorkDistance,
  quantityWorkHours,
  quantityWorkLength,
  quantityWorkZone,
  quantityZoneDevices,
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
  choiceDefect,
  choiceDefectExtent,
  choiceDefectPlace,
  choiceDevicePlace,
  choiceDrumMode,
  choiceEdgeBreakState,
  choiceEdgeSupport,
  choiceFlaggerPlace,
  choiceFlaggersPosted,
  choiceLaneEdge,
  choiceLayoutKind,
  choiceLiftRolling,
  choiceMatState,
  choiceMixGradation,
  choiceMixKind,
  choiceNightStation,
  choiceOrderEnds,
  choiceOvernightState,
  choicePatchShape,
  choiceQueuePlace,
  choiceRavelState,
  choiceRecurring,
  choiceRidgePlace,
  choiceRoadShape,
  choiceRoadType,
  choiceRollingDirection,
  choiceRowEnd,
  choiceRutEdges,
  choiceRutRolling,
  choiceSeatBelt,
  choiceSignGap,
  choiceSignPlace,
  choiceSignsIdle,
  choiceSoftPlace,
  choiceSpeedUnit,
  choiceStickPlace,
  choiceStraightedgeWay,
  choiceStreakLook,
  choiceSurface,
  choiceSurfaceState,
  choiceTackGrade,
  choiceTackKind,
  choiceTackState,
  choiceTankWater,
  choiceTaperKind,
  choiceTemperatureTrend,
  choiceTrafficControlState,
  choiceTrafficLevel,
  choiceVisibility,
  choiceWastePlace,
  choiceWaterState,
  choiceWavePlace,
  choiceWeatherState,
  choiceWindrowPlace,
  choiceWindrowShape,
  choiceWorkDuration,
];

export const relations: readonly RelationRecord[] = [
  relationAdvanceLength,
  relationAreaPerTon,
  relationBaseTemperature,
  relationBaseTemperatureAir,
  relationBladePasses,
  relationBladeReach,
  relationBufferLength,
  relationBufferLengthMetric,
  relationClosureLength,
  relationCoolingAir,
  relationCoolingAirBase,
  relationCostPerTon,
  relationCostPerTonPlaced,
  relationCrownBuild,
  relationCrownDrop,
  relationCrownWedgeDepth,
  relationCrownWedgeMass,
  relationCycleTime,
  relationCycleTimeByHaul,
  relationDeliveryRate,
  relationDeviceCountAsSpaced,
  relationDeviceCountTangent,
  relationDeviceCountTaper,
  relationDeviceCountTaperAsSpaced,
  relationDeviceCountTaperNeeded,
  relationDeviceSpacingShortTaper,
  relationDeviceSpacingTangent,
  relationDeviceSpacingTaper,
  relationDeviceSpacingTaperUnsaid,
  relationDistributorSpeed,
  relationDownstreamTaperLaidOut,
  relationDumpSpacing,
  relationEdgeDropAfter,
  relationEmulsionVolume,
  relationEndTaperLength,
  relationEndTaperLengthLift,
  relationEndTaperMass,
  relationEquipmentCost,
  relationFirstLiftMass,
  relationFlaggerTaperLaidOut,
  relationFullLength,
  relationFullLengthBoth,
  relationFullLengthPlain,
  relationGraderPasses,
  relationGradingAreaRate,
  relationGradingTime,
  relationGradingTimeTurns,
  relationHalfDrum,
  relationHotSectionLength,
  relationImpactsPerFoot,
  relationJobCost,
  relationJobCostMixLabor,
  relationJobCostNoTack,
  relationLaborCost,
  relationLaborHours,
  relationLastLiftMass,
  relationLayTime,
  relationLayingRatePlaced,
  relationLayingTime,
  relationLeastPasses,
  relationLeftAtYield,
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
  relationLoadRollingTime,
  relationLoadsLeft,
  relationLongTaperSpacing,
  relationMassAtYield,
  relationMaterialCost,
  relationMergingTaper,
  relationMergingTaperMetric,
  relationOneLaneLength,
  relationOrderCost,
  relationOrderLoads,
  relationPatchArea,
  relationPatchAreaCount,
  relationPatchDepthLifts,
  relationPatchLoose,
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
  relationResidueAsphalt,
  relationReturnSpeed,
  relationRollDown,
  relationRollerLanes,
  relationRollerLimitedRate,
  relationRollerPasses,
  relationRollersNeeded,
  relationRollingAreaRate,
  relationRollingRate,
  relationRollingRateAll,
  relationRollingTime,
  relationRollingTimeTotal,
  relationRowDepth,
  relationRowDepthWeighed,
  relationRutLength,
  relationRutSection,
  relationRutVolume,
  relationRutVolumeOne,
  relationShiftingTaper,
  relationShoulderTaper,
  relationShoulderZoneLength,
  relationSignNearestLeastRural,
  relationSignNearestLeastUrban,
  relationSignNearestMostRural,
  relationSignNearestMostUrban,
  relationSprayWidth,
  relationSpreadRate,
  relationSpreadRateLift,
  relationStoneSize,
  relationTableGrade,
  relationTableSpeed,
  relationTableSpeedMetric,
  relationTackArea,
  relationTackAreaShot,
  relationTackMass,
  relationTackOrder,
  relationTackRate,
  relationTackRate60,
  relationTackRatePad,
  relationTackRateUsed,
  relationTackRunLength,
  relationTackUsed,
  relationTackUsedFromTank,
  relationTackVolume,
  relationTackVolume60,
  relationTackVolume60Tank,
  relationTackVolume60Used,
  relationTackVolumeFactorAsphalt,
  relationTackVolumeFactorCutback,
  relationTackVolumeFactorEmulsion,
  relationTankTime,
  relationTaperLengthFlagger,
  relationTaperNeededDownstream,
  relationTaperNeededFlagger,
  relationTaperNeededMerging,
  relationTaperNeededShifting,
  relationTaperNeededShoulder,
  relationTimeToRoll,
  relationTonsLeft,
  relationTripsPerTruck,
  relationTruckCount,
  relationTruckSpacing,
  relationTrucksNeeded,
  relationUnitWeight,
  relationWaterVolume,
  relationWindrowBase,
  relationWindrowHeight,
  relationWindrowLength,
  relationWindrowLengthWeighed,
  relationWindrowMassAll,
  relationWindrowMassPer100ft,
  relationWindrowSection,
  relationWindrowSectionAll,
  relationWindrowSectionParabola,
  relationWindrowSectionTrapezoid,
  relationWindrowSectionTriangle,
  relationWindrowSectionWeighed,
  relationWindrowSectionWhole,
  relationWorkDistance,
  relationWorkLength,
  relationWorkZoneFlaggers,
  relationWorkZoneLaneClosed,
  relationWorkZoneShoulder,
  relationZoneDevicesFlaggers,
  relationZoneDevicesLaneClosed,
  relationZoneDevicesShoulder,
  relationZoneLength,
  relationZoneLengthTurning,
];

export const limits: readonly LimitRecord[] = [
  limitAirTemperature,
  limitBufferLength,
  limitConeHeight,
  limitCutbackUndiluted,
  limitDeviceSpacing,
  limitDilutionOnce,
  limitDropOff,
  limitDropOffAfter,
  limitDropOffSchedule,
  limitEndSpread,
  limitFewestPasses,
  limitFlaggerSight,
  limitFlushFinish,
  limitFullClosure,
  limitHoldTime,
  limitHotSection,
  limitImpactsPerFoot,
  limitLaySpeed,
  limitLiftMax,
  limitLiftMax6x,
  limitLiftMax8x,
  limitLiftMin,
  limitLiftMin3x,
  limitLiftMin4x,
  limitOneLaneAtATime,
  limitOpenCool,
  limitOpenLane,
  limitOpenLaneLeast,
  limitOvernightRamp,
  limitPayload,
  limitPilotCar,
  limitPlacedBeforeFinish,
  limitQueueRoom,
  limitRollerKeepsUp,
  limitRollerOverlap,
  limitRollerOverlapFlorida,
  limitRollerPace,
  limitRollerSpeed,
  limitSignHeight,
  limitSignSpacing,
  limitSpeedDrop,
  limitSprayTemperature,
  limitStaticThinLift,
  limitStoneFitsLift,
  limitStraightedge,
  limitSurfaceTemperature,
  limitTackRate,
  limitTaperLength,
  limitTurnoutDistance,
];

export const practices: readonly PracticeRecord[] = [
  practiceAdvanceSign,
  practiceApparel,
  practiceArrowBoardMode,
  practiceBackingSpotter,
  practiceBufferEmpty,
  practiceDrumBridgesRut,
  practiceFlaggerCount,
  practiceFlaggerStation,
  practiceMachineInsideLane,
  practiceMaterialRunOut,
  practiceNightLighting,
  practiceNoRain,
  practiceNoWaterInCutback,
  practiceOpenToTraffic,
  practiceOvernight,
  practicePoorVisibility,
  practiceQueueEnd,
  practiceRollEachLift,
  practiceRollLowToHigh,
  practiceRollerBelt,
  practiceRollerEdge,
  practiceSignsTrue,
  practiceTackCleanDry,
  practiceTackSet,
  practiceTemperatureTrend,
  practiceTrafficControlFirst,
  practiceTrafficControlLast,
  practiceWasteDisposal,
  practiceWindrowSide,
  practiceWorkDuration,
];

export const tables: readonly TableRecord[] = [
  tableDowngradeColumns,
  tableLargestStone,
  tableSignSpacing,
  tableSprayTemperature,
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

export const faults: readonly FaultRecord[] = [
  faultBarStreak,
  faultBleeding,
  faultCenterHump,
  faultChunks,
  faultColdLoad,
  faultDragMarks,
  faultEndBump,
  faultFailureReturns,
  faultJointOpen,
  faultLowPatch,
  faultPickup,
  faultPileAtEnd,
  faultPonding,
  faultPushing,
  faultRainedOnTack,
  faultRaveling,
  faultRidge,
  faultRollerCracks,
  faultRollerMarks,
  faultRunsShort,
  faultScallops,
  faultSegregation,
  faultSlippage,
  faultSoftSpot,
  faultSpillUnderWheels,
  faultTackTracking,
  faultTearing,
  faultThinEdge,
  faultWashboards,
  faultWheelRidges,
];

export const repairs: readonly RepairRecord[] = [
  repairBladePatch,
  repairBlotOrMill,
  repairCrackSeal,
  repairCutThenBlade,
  repairDigOut,
  repairEngineer,
  repairFixDrainageFirst,
  repairHandPatch,
  repairShoulderPull,
  repairSurfaceSeal,
  repairWatchIt,
];

export const defects: readonly DefectRecord[] = [
  defectAlligatorCracking,
  defectBleeding,
  defectDepression,
  defectDropOff,
  defectEdgeBreak,
  defectPothole,
  defectRaveling,
  defectRutting,
  defectShoving,
  defectSingleCracks,
  defectSlippage,
  defectSoftBase,
];
