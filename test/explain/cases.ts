const driver =
  "head H clubType=driver hand=right socket.type=receiver socket.family=Alder deniedFaults=crack,caved-face";
const looked = "deniedFaults=dent-shaft,crease-shaft,crack,exposed-fibre";
const wood = `shaft S suits=wood material=graphite flex=stiff length.lengthIn=44m length.basis=shaft-alone tip.diameterIn=0.335m tip.form=parallel buttDiameterIn=0.6 ${looked}`;
const alder =
  "adapter A family=Alder hand=right bore.diameterIn=0.339m bore.form=parallel bore.depthIn=1.25m tiltDeg=1.5 deniedFaults=crack,adapter-damaged";
const birch = alder.replace("Alder", "Birch");
const grip = "grip G coreDiameterIn=0.6 lengthIn=10.5";
const onShaft = "bonded A S";
const gripped = "gripped S G";
const iron =
  "head H clubType=iron hand=right socket.type=bore socket.diameterIn=0.37m socket.form=parallel socket.depthIn=1.25m deniedFaults=crack,caved-face";
const ironShaft =
  "shaft S suits=iron material=steel length.lengthIn=38m length.basis=shaft-alone tip.diameterIn=0.37m tip.form=parallel tip.parallelSectionIn=6 buttDiameterIn=0.6 deniedFaults=dent-shaft,crease-shaft,crack,bent-shaft,rust";
const bonding = "goal skill=bond";

/** Small benches, each for one thing that has to be said well. Makers and families are invented. */
export const cases: Readonly<Record<string, readonly string[]>> = {
  "fits-by-screw-alone": [driver, alder, wood, grip, onShaft, gripped],
  "wrong-hand": [driver.replace("right", "left"), alder, wood, grip, onShaft, gripped],
  "other-family": [driver, birch, wood, grip, onShaft, gripped],
  "claim-says-it-fits": [
    driver,
    birch,
    wood,
    grip,
    onShaft,
    gripped,
    "claim receiver=Alder adapter=Birch verdict=fits evidence=tried",
  ],
  "claim-says-no": [
    driver,
    birch,
    wood,
    grip,
    onShaft,
    gripped,
    "claim receiver=Alder adapter=Birch verdict=does-not-fit evidence=maker-stated",
  ],
  disputed: [
    driver,
    birch,
    wood,
    grip,
    onShaft,
    gripped,
    "claim receiver=Alder adapter=Birch verdict=does-not-fit evidence=tried",
    "claim receiver=Alder adapter=Birch verdict=fits evidence=tried",
  ],
  "seller-only": [
    driver,
    birch,
    wood,
    grip,
    onShaft,
    gripped,
    "claim receiver=Alder adapter=Birch verdict=fits evidence=seller-said",
  ],
  "graphite-tip-too-wide": [
    iron,
    ironShaft
      .replace("steel", "graphite")
      .replace("0.37m", "0.372m")
      .replace(/deniedFaults.*/, looked),
    grip,
    bonding,
  ],
  "no-adapter-takes-the-tip": [driver, alder, wood.replace("0.335m", "0.341m"), grip, bonding],
  shim: [driver, alder.replace("0.339m", "0.35m"), wood, grip, bonding],
  "sand-a-steel-tip": [iron.replace("0.37m", "0.369m"), ironShaft.replace("0.37m", "0.371m"), grip, bonding],
  ream: [
    `${iron.replace("0.37m", "0.355m").replace("parallel", "taper")} socket.outsideDiameterIn=0.53m`,
    ironShaft,
    grip,
    "goal skill=machine",
  ],
  "wall-too-thin": [
    `${iron.replace("0.37m", "0.355m").replace("parallel", "taper")} socket.outsideDiameterIn=0.44m`,
    ironShaft,
    grip,
    "goal skill=machine",
  ],
  "dented-shaft": [driver, alder, wood.replace(looked, "faults=dent-shaft"), grip, onShaft, gripped],
  "too-short-for-the-target": [
    `${iron} socket.bbgmIn=1m`,
    ironShaft,
    `${grip} capThicknessIn=0.2m`,
    "goal skill=bond playingLengthIn=44",
  ],
  "perhaps-too-short-for-the-target": [
    driver,
    alder,
    wood.replace("44m", "41m"),
    grip,
    "goal skill=bond playingLengthIn=46",
  ],
  "beyond-skill": [driver, alder, wood, grip],
  "cut-and-weighed": [
    `${driver} massG=196m`,
    `${alder} massG=8m`,
    `${wood.replace("44m", "45m")} massG=58m balanceFromTipIn=23`,
    `${grip} massG=50m`,
    "goal skill=bond playingLengthIn=45 swingWeightPoints=36",
  ],
  "nothing-known": ["head H", "shaft S", "grip G", bonding],
  "wish-for-another-hand-and-flex": [
    driver,
    "head L clubType=driver hand=left socket.type=receiver socket.family=Alder",
    alder,
    wood,
    grip,
    onShaft,
    gripped,
    "goal hand=right flex=regular",
  ],
  "missing-fact": [driver, alder, wood.replace(" tip.diameterIn=0.335m", ""), grip, bonding],
  "length-on-no-basis": [
    driver,
    alder,
    wood.replace("length.basis=shaft-alone", "length.basis=unstated").replace("44m", "43.5"),
    grip,
    onShaft,
    gripped,
    "goal skill=bond playingLengthIn=45",
  ],
  "donor-club": [
    driver,
    "head D clubType=driver hand=right socket.type=receiver socket.family=Alder faults=crack",
    alder,
    wood,
    grip,
    "screwed D A",
    onShaft,
    gripped,
  ],
  "adapter-wanted": [driver, wood, grip, bonding],
  "shaft-and-head-wanted": [
    driver,
    birch,
    wood,
    grip,
    onShaft,
    gripped,
    "goal skill=machine playingLengthIn=45",
  ],
};
