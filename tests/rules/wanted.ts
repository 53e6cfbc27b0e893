const words = (text: string): string[] => text.trim().split(/\s+/);

/** What a crew reckons with: callers ask for these by name, so that none may go missing or be renamed. */
export const wantedQuantities = words(`
  patch-length patch-width patch-area patch-depth deepest-depth patch-volume unit-weight premix-mass waste
  end-spread premix-order lift-max lift-count lift-thickness lift-mass roll-down spread-rate lift-loose stone-size
  lift-min truck-payload truck-count dump-spacing tons-left load-length placed-depth tack-residual residue
  dilution tack-rate water-volume tack-area tack-coats tack-volume tack-temperature tack-volume-60 spray-width
  tank-volume tack-run-length distributor-speed pump-rate windrow-section side-slope windrow-height windrow-base
  blade-length blade-angle blade-overlap blade-reach blade-passes grader-speed grader-efficiency grading-time
  grader-passes work-distance turn-time drum-width roller-overlap roller-overhang roller-lanes roller-coverages
  roller-passes roller-speed roller-efficiency rolling-time rolling-time-total posted-speed offset merging-taper
  shifting-taper shoulder-taper flagger-taper downstream-taper sign-spacing-a sign-spacing-b sign-spacing-c
  buffer-length device-spacing-taper device-spacing-tangent device-count zone-length work-length queue-length
  cross-slope crown-drop end-taper-ratio end-taper-length haul-distance haul-speed return-speed load-time
  unload-time wait-time cycle-time lay-time laying-rate trucks-needed material-price cost-per-ton crew-size
  labor-rate equipment-rate work-hours material-cost job-cost patch-count edge-drop flush-height straightedge-gap
  turnout placed-share air-temperature surface-temperature rut-depth rut-width rut-section rut-volume
  mix-temperature base-temperature wind-speed time-to-roll hot-section-length max-specific-gravity
`);

/** What a figure or a plan is held against, likewise. */
export const wantedRules = words(`
  lift-max lift-min end-spread tack-clean-dry tack-set tack-rate windrow-side lay-speed fewest-passes
  turnout-distance material-run-out placed-before-finish roll-each-lift roll-low-to-high roller-overlap
  roller-speed roller-keeps-up flush-finish straightedge air-temperature no-rain taper-length buffer-length
  sign-spacing device-spacing drop-off traffic-control-first traffic-control-last payload machine-inside-lane
  roller-edge static-thin-lift drum-bridges-rut flagger-count flagger-station pilot-car night-lighting cone-height
  apparel backing-spotter open-to-traffic overnight waste-disposal
`);
