/**
 * Words of the trade and of everyday selling that are never taken for a misspelt name of the catalogue, and that stay readable
 * where they stand inside a name ("Quillon 2 adapter" still says adapter).
 */
const tradeNouns = `adapter adaptor adapters adaptors sleeve sleeves head heads shaft shafts grip grips cover covers headcover
headcovers wrench wrenches tool driver drivers wood woods fairway fairways hybrid hybrids rescue utility iron irons wedge wedges
putter putters steel graphite carbon taper parallel`;

const everydayWords = `about absolutely accepted adjustable after again ahead alone also always amount another anyone anything area
around asking back bargain barely basement been before being below best better between blue both bought bounce brand brass bring
brought build built bulge bundle butt cash centre center change cheap chip chipped chips cheers clean cleaned clear clone club
close closed closer closely clothes glove gloves clubs collect collected collection color colour come comes condition contact cord cost could course cracked crack crown damage
damaged dent dented dents deal degree degrees delivery denne dings does done down each easy either ends every everything
excellent extra extras face fast fault faults feel feels felt find fine firm fits fitted fixed flex forged foam free from full
fully game garage gave gets given gives going gold golf gone good grab gram grams great green gripped grooves half hand handed
handle hands hardly have hello here high hits home hosel hour house hours https included includes including inch inches inside
interest into issue issues item items job just keep kept know ladies last late left leave length less lefty letter level light
lightly like line list listed little loft lofts long look looking looks loose lose lost lots love lovely made make makes mark
marks mass maybe mens message mint minor model month months more most move much must near neat need needed needs never newer
nice none normal note nothing number odds offer offers only onto open order original other others ours over overall pack pair
part parts paid paint pair pals perfect pick picked pics picture pictures piece plays played player please plus point post postage
posted postal pound pounds price prices pull pulled pulls quality quick quid rare rattle read ready really reason reduced regular
removed replaced retail right rock round rounds rust said sale sales same save scratch scratched scratches second seen sell
selling senior sent serial serious ship shipped shipping short should show side since single size skied slight slightly small
smart snap sold sole some soon spare spares spec speed spin stamp standard start state still stiff stock store strong such swap
swapped sweet swing take taken tape tell than thank thanks that their them then there these they thing things think this those
three through tiny time times tip together took torque tour trade tried true turn twice twist type under unit until unused
upgrade upgraded used very want wanted warranty watch wear week weeks weight well went were what when where which while white
will wish with without wont work works worn worth would wrap year years your yours zero zustand versand preis schaft kopf schlager
griff hallo verkaufe suche rechts links haube eisen holz linkshand rechtshand sehr gute guter neue neuer abholung festpreis tausch
tete manche droitier gaucher vends cherche livraison bois prix etat avec sans neuf debattre negociable bonne grip vendo busco
cabeza varilla diestro zurdo envio precio estado nuevo usado hierro madera funda llave gastos incluidos`;

const commonNames = `anchor angel apex arrow ash aspen autumn badge banner baron beacon bear beech bell birch bishop black blade blaze bloom bluebell bolt
bold bolster border bramble brave breeze bridge bright broad brook bronze buck bullet butter button cape cedar chalk chase chip clay clear cliff
cloud clover coast cobalt comet compass copper coral corner course court cove crane creek crest cross crow crown crystal
current curve dart dawn deer delta diamond dove drift eagle earth east echo edge ember empire falcon feather fern field fire flame flash
flint flow focus force forge forest fort fox frost fusion garden gate ghost giant glide globe grace grain granite grove guard gull
hammer harbor harbour harvest haven hawk hazel heart heath hedge heron honor honour horizon hunter impact ivory ivy jade jet kestrel king
kite knight lake lance lark launch leaf ledge legacy lever liberty lily line lion marble marsh master meadow merit mill mint mist moon moor
moss motion noble north nova oak ocean olive onyx orbit otter owl park path peak pearl pebble phantom pilot pine pioneer plain plane prairie pride
prime prince pure quarry quest rapid raven reach reed reef regal ridge rise river robin rocket rook rope rose royal ruby sable saddle sage sail
salt sand scout sedge shadow shield shore sierra silk silver sky slate smooth snow soft softly solar solid sound south spark spear spirit spring
spruce stag star steady steep stone storm stream strike stub summit sun swan swift sword target thistle thorn thunder tide tiger timber titan torch
tower trail trident trophy true tulip valley vault vector velvet venture victory view vision volt wave west whisper willow wind wing winter wolf zenith`;

const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/u));

const nouns = wordSet(tradeNouns);
const everyday = wordSet(everydayWords);
const common = wordSet(commonNames);

/** Whether a word of a name still says by itself what kind of thing it is about. */
export const isTradeNoun = (word: string): boolean => nouns.has(word);

/** Whether a word is ordinary where clubs are sold, so that it is no misspelt name. */
export const isEverydayWord = (word: string): boolean => nouns.has(word) || everyday.has(word);

/** Whether a word is plain English that may be a model's name too, so that by itself it says little. */
export const isOrdinaryWord = (word: string): boolean => isEverydayWord(word) || common.has(word);
