import { phrases } from './phrases.ts'

/** What is seen, before it is known on which part. */
export type Sign =
  | 'missing'
  | 'off'
  | 'slip'
  | 'loose'
  | 'lift'
  | 'crack'
  | 'crack-to-fastener'
  | 'break'
  | 'shatter'
  | 'lengthwise'
  | 'chip'
  | 'corner'
  | 'lock'
  | 'across'
  | 'hole'
  | 'scour'
  | 'age'
  | 'debris'
  | 'repair'
  | 'mismatch'
  | 'discontinued'
  | 'flaw'
  | 'release'
  | 'deform'
  | 'expose'
  | 'tear'
  | 'raise'
  | 'rust'
  | 'rot'
  | 'gap'
  | 'mark-by-others'
  | 'sound'
  | 'weakly-sound'
  | 'no-access'
  | 'poor'
  | 'crease'
  | 'unsealed'
  | 'dirty-seal'
  | 'clean-seal'
  | 'granules'
  | 'bruise'
  | 'high-nail'
  | 'stair-step'
  | 'wavy'
  | 'dent'
  | 'scratch'
  | 'edge-rust'

const PIECE = 'tile|cap|piece|shingle|tab|one'
const FASTENER = 'nail|screw|fastener|fastening'
const GLUE = 'bond|stick|adhere|adhesion|grab|contact|attachment'

/** Everyday words for what is seen; see `phrases` for how they are written. */
const SIGNS: readonly (readonly [Sign, string])[] = [
  [
    'missing',
    `missing; gone; absent; vanish; disappear; lose; blow|fly|rip|tear|knock|peel|suck off|away|out; fall|drop
    off|out; break|snap off and gone; not there; no longer there|here|present|in place; nothing there|left; bare
    spot|patch|gap where; where ** ${PIECE} be|use|used|ought|should|go|belong|sit; blow|rip|tear|knock|suck|take ** off|away; take ** ** off|away;
    lose * ${PIECE}; ${PIECE} out; ${PIECE} has|have|is|are come off|away; no tile; be
    no more; have go from`,
  ],
  ['off', `be|come off; come right|clean|clear off`],
  [
    'slip',
    `slip; slide; displace; shift; dislodge; unseat; misalign; slump; creep; migrate; skew; askew; crooked; cockeyed;
    out of line|course|place|position|alignment|plumb|row; off line|course; off its|their|the course|line|row|mark;
    offset; rotate; scoot|skid|sag|settle|inch|shuffle|wander down|over|out|downhill|sideways; move|drop|kick|work|travel|come|ride|walk|run
    down|out|over|sideways|downhill|downslope|downward; move; move * inch|foot|mm|cm|millimeter|centimeter; drop *
    inch|foot; drop out; turn sideways|around|crosswise; sit|hang low|crooked|sideways|lower; not in
    line|place|position|its course; drop|fall|slide|slip|move|kick|knock|push|pull|jump|come|go|work|walk|get * out of line|course|place|position|alignment|plumb|row`,
  ],
  [
    'loose',
    `loose; wobble; wobbly; wiggle; wiggly; jiggle; rattle; rock; teeter; flop; floppy; chatter; shake; shaky;
    unattached; unfastened; unsecured; detach; free; be free; move
    under|when|with|by|if|underfoot|around|freely|back; flap; flutter; turn|twist * hand|finger; move * hand|finger|foot; not|no *
    tight|secure|attach|fasten|nail|solid|seat|snug|hold|anchor|tie|fix; not|nothing hold; off its|their|the
    bed|mortar|bedding|seat; come|be|knock|lift|pop|rise off its|their|the bed|mortar|bedding;
    come|work|pop|shake|pull|break loose|free; hang loose|free|off|by|down|over; hang; nothing|not|no * hold; just sit|lie|lay there|loose; give when; give a little; play in it; not
    bed; no nail|screw|fastener in|hold|at; spin; swivel`,
  ],
  [
    'lift',
    `lift; raise; rise; stand|push|stick|sit|bow|jack * up|proud; lift|pick|come|pull|pop|raise|rise|flip|tip|tilt|pry|swing|go|flap up; pick * up; lift|pull *
    up|off|out; come * hand; can|could lift; kick up; come up when|with|by|under|about|in|to|easily; come right|straight|easily|easy up; come up * inch|foot|pound|mm|half|quarter; nose|butt up * inch|pound|mm|half|quarter; stand up when`,
  ],
  ['crack', `crack; fracture; split; shrink; fissure; hairline; hairline crack; crack open|through`],
  [
    'crack-to-fastener',
    `crack|split|fracture ** to|toward|into|from|at|through|off|around|by * ${FASTENER}|hole; crack|split|fracture **
    ** to|toward|into|from * ${FASTENER}|hole; ${FASTENER}|hole ** crack|split|fracture; break ** to|toward|from|at
    * ${FASTENER}; crack|split start|begin|run|go ** ${FASTENER}|hole; crack|split|fracture * ${FASTENER}|hole to`,
  ],
  [
    'break',
    `break; bust; snap; shear; fragment; crumble; crush; fall|break|come apart; break up; disintegrate; wreck; collapse`,
  ],
  [
    'shatter',
    `shatter; smash; pulverize; obliterate; in|into|to bit|piece|shard|smithereens|chunk|rubble; in|into|to a|many|little|small|tiny|thousand|hundred|dozen * bit|piece|shard|chunk; bust|break|smash all up|apart`,
  ],
  [
    'lengthwise',
    `crack|split|fracture|break ** lengthwise|longways|lengthways|vertical|vertically; crack|split|fracture|break ** top|head|up to|and
    bottom|nose|down|butt; lengthwise|vertical crack|split|fracture`,
  ],
  [
    'across',
    `in|into two|half|three; in|into two|three half|piece|part; diagonal; diagonally; across the
    middle|center|tile|face|width|body|whole; right|straight|clean|all across; corner to corner; side to side|edge;
    edge to edge; down|through the middle|center; through|across the middle of; from left|right to; crosswise;
    full|whole width; across it|them`,
  ],
  [
    'chip',
    `chip; star; star shape; star shape break|crack|fracture; crescent; half moon; impact; impact
    mark|point|fracture|crack|damage|spot|break|hit; hit|strike by; something|rock|stone|branch|object|debris
    hit|strike; hit|strike it|this|them; puncture; gouge; punch|poke * hole|through; go|come|drive|punch|poke|fall through ** tile|cap; divot; pock; spider web; spall;
    nick; strike mark; bullet`,
  ],
  [
    'corner',
    `corner ** break|gone|missing|snap|chip|crack|off|lose|shear|knock|bust|pop|split|fracture;
    break|chip|crack|missing|snap|lose|gone|bust|fracture|knock|shear|nip ** corner; corner break|crack|piece;
    corner gone; no corner; corner lie; corner|edge nip`,
  ],
  [
    'lock',
    `lock|rib|interlock|sidelap|sidelock ** break|gone|missing|snap|chip|crack|off|lose|shear|bust|split|fracture;
    side lap|lock|rib ** break|gone|missing|snap|chip|crack|off|lose|shear|bust|split|fracture;
    break|chip|crack|snap|lose|shear|missing|split|fracture ** lock|rib|interlock|sidelap|sidelock;
    break|chip|crack|snap|shear|missing|split|fracture ** side lap|lock|rib|channel; crack|break|split along *
    side|lock|edge rib|lock|lap`,
  ],
  [
    'hole',
    `hole|slot ** ** wear|oval|elongate|stretch|wallow; waller; hole|slot ** wear|oval|elongate|egg|enlarge|wallow|stretch|ream|widen|lengthen|oblong|wider|bigger;
    elongate|oval|wear|enlarge|wallow|oblong|egg|stretch * hole|slot; egg shape; wallow out; hole * break out;
    elongate`,
  ],
  [
    'scour',
    `scour; abrade; abrasion; erode; erosion; sandblast; sand blast; wear|rub|sand|scrape away|off|thin|down|smooth;
    pit; coating|finish|surface|glaze|slurry|color|paint ** gone|off|lose|wear|missing|thin|rub; wear|lose|bare
    coating|finish|surface|glaze|slurry; surface ** wear|rough|scuff; scuff surface|finish|coating; roughen; rub`,
  ],
  [
    'age',
    `algae; moss; mildew; mold; lichen; fade; efflorescence; stain; discolor; salt|white bloom|haze|powder|deposit;
    black|green streak|stain; growth; weather; sun bleach; bleach; fungus; grime; chalky`,
  ],
  [
    'debris',
    `full of; pack|clog|choke|plug * with; wedge|lodge|jam * under|between|into|against|in; clog; lie|lean|drape|lodge|wedge|scatter across|over|against ** tile|roof|slope|valley|ridge|gutter; debris; branch; limb; frond; twig; palm leaf; leaf; pine needle|cone; foreign object; trash; litter;
    piece|chunk|part|bit|section|sheet|length|scrap|strip of *
    metal|aluminum|tin|plastic|vinyl|fabric|canvas|screen|glass|cardboard|wood|lumber|fence|sign|plywood|tree|gutter|siding|trim|awning|screen|pipe|rock|brick; acorn; tree part;
    coconut; somebody else tile`,
  ],
  [
    'repair',
    `somebody|someone * foam|goop|tar|smear; patch; repair; roof|roofing|plastic|asphalt cement|tar|goop|goo|mastic; tar; mastic; caulk; sealant; silicone;
    smear; goop; gob of; slather; slap|smear|spread|dab on; prior|previous|old|earlier|past|former|existing repair|fix|patch|work|job; somebody|someone
    ** fix|glue|seal|patch|repair|work|redo; tile|cap|piece replace; be|been replace|redo|reset|fix|rebed|repoint|glue; replace
    before|already|earlier|previously|sometime; replacement tile|piece|cap; new|newer|fresh|fresher
    mortar|grout|flashing|metal|felt|underlayment; touch|paint up; paint over; cement smear; foam fill; glue back;
    expand foam`,
  ],
  [
    'mismatch',
    `mismatch; not match; no match|matching; different|odd|wrong|another|other
    color|shade|profile|shape|style|type|size|batch|tint; odd tile|one|ball|piece; off color; color|shade|tint off|wrong|different; not the same
    color|profile|shape|tile|kind|shade|as; newer|redder|lighter|darker|brighter|cleaner tile|one|than; new|newer
    tile; do not|never go with; stand out from`,
  ],
  [
    'discontinued',
    `discontinue; no longer make|available|produce|sell|manufacture; not make|produce|sell|available|manufacture **
    anymore|more; not be make; stop make|produce; out of production; obsolete; can not get|find|buy|source * anymore|match|more|again`,
  ],
  [
    'flaw',
    `craze; void; pinhole; pin hole; manufacture|factory|cast|casting|fire|firing flaw|defect|fault|void|blemish; air
    pocket|bubble; honeycomb; blemish; kiln mark`,
  ],
  [
    'release',
    `let go; unstuck; release; debond; delaminate; unbond; no ${GLUE}; not|never ${GLUE}; not|never * ${GLUE}; bond
    break|fail|gone|lose; come|pull|pop|break away|loose|off|free from; come|pull|break|pop away; give way|up; not hold|touch; lose
    its|their|the bond|grip|hold; miss the tile; fail`,
  ],
  [
    'deform',
    `knock|push|tip over|sideways; bend; peel; curl; kink; buckle; crimp; fold; warp; twist; deform; separate; flap; mangle; crumple; pry; open up;
    pull|peel|pop|come|lift|stand|stick|poke|bow|fold|push|sprung|spring away|back|up|off|out|loose|over|proud; out of shape;
    sprung; unhook; flashing|metal|edge|trim pull`,
  ],
  [
    'expose',
    `just|only|nothing * felt|paper|underlayment|membrane; expose; show; show through; visible; uncover; bare; naked; look|see right|straight at|to|through; can|could|you
    see; look at; open to the; in|plain view|sight; peek through; down to the felt|paper|underlayment|membrane`,
  ],
  [
    'tear',
    `tear; rip; brittle; scuff; dry|dried out; cook; puncture; shred; wrinkle; wear|rub through; nail hole in;
    crispy; deteriorate; hole in`,
  ],
  [
    'raise',
    `back|work out; back|work|pop|stick|stand|poke|push|pull|come|sit|rise|lift|ride|walk|creep|kick|jack *
    up|out|proud; stick|poke|stand|sit|pop|back|work up|out|proud|through|above|high; protrude; proud; raise; lift;
    pop; not drive|sink|seat * all|home|flush|down; not * flush; head * pop|break|snap|rust off; pull through;
    unscrew; nail|screw|fastener up; nail|screw|fastener head up|proud`,
  ],
  ['rust', `rust; rusty; corrode; corrosion; eat through|away; rust out|away|off|through`],
  ['rot', `rot; rotten; mushy; spongy; soft; leak; water stain|mark|damage; moldy; dry rot; sag`],
  [
    'gap',
    `gap; a|the|big|small gap; open; wide open; stand|sit off; daylight; space under|between|below; not|no longer
    touch; lift|pull|separate|pop|come away from`,
  ],
  [
    'mark-by-others',
    `chalk mark|ring|circle|line|x|box|square; chalk; crayon; spray paint; paint mark|circle|x; circle|mark by|from *
    else|other|before; already mark|circle; somebody|someone * mark|circle|tag; tarp; boot print`,
  ],
  [
    'no-access',
    `can|could|do|would|will|be|did not ** get|reach|access|walk|climb|inspect|set|go **
    to|on|onto|up|over|it|them|that|safely|out|at|the; can|could not get|reach|access|inspect|walk; not
    accessible|reachable|walkable; inaccessible; not|never walk|inspect|check|look|reach|access|visit|climb; skip it|this|that|because|too; unable to
    get|reach|walk|access|inspect|see|climb; not able to get|reach|walk|access|inspect|see|climb; too steep|wet|slick|slippery|high|dangerous|fragile|brittle to|for; but|because ** too steep|wet|slick|slippery|high|dangerous|fragile; try to
    get|reach|walk|climb ** too steep|wet|slick|slippery|high|dangerous|fragile; no
    access|way; out of reach; can|could not see ** behind|under|beyond|past|over|from here; stay off; not safe to;
    have to skip`,
  ],
  [
    'sound',
    `sound; solid; tight; intact; secure; snug; firm; stable; undamaged; in|look|be
    good|fair|decent|great|nice|fine|sound|okay|ok|serviceable|excellent|perfect|reasonable|acceptable
    shape|order|condition|repair|nick; in *
    good|fair|decent|great|nice|fine|sound|okay|ok|serviceable|excellent|perfect|reasonable|acceptable|pretty
    shape|order|condition|repair; in order; hold up|well|fine|good|firm|tight|strong; still hold; hold *
    well|fine|good|firm|tight|nicely; well bed|attach|fasten|nail|seal|seat|stick|bond|set; good
    condition|shape|order; unbroken; still seal|bond|stick|attach|bed|tight; no problem|issue|damage|defect
    with|on|to|in; have no problem|issue|damage|defect; nothing wrong with`,
  ],
  [
    'poor',
    `shot; in * bad|poor|rough|terrible|sad|sorry|awful shape|condition|repair|order; bad|poor|rough|terrible|awful
    shape|condition; deteriorate; fail; go bad; be bad; wear out; fall out; crumble; perish; do for; past its|their
    life|best; at|near the end of its|their life`,
  ],
  [
    'weakly-sound',
    `good; fine; okay; ok; all right; alright; great; decent; in place; check out; perfect; healthy; lie|lay|sit
    flat|well|right; do its|their job`,
  ],
  ['crease', `crease; fold|crease line; fold back|over; fold`],
  [
    'unsealed',
    `unseal; not|never|no seal; seal ** break|fail|open|gone|pop|give|let|loose; lie flat but; not|never bond|stick
    down`,
  ],
  [
    'dirty-seal',
    `dirt|dust|dirty|dusty|grit|sand ** seal|strip|adhesive|both face|side; seal|strip|adhesive **
    dirt|dust|dirty|dusty|contaminate|grit|sand`,
  ],
  [
    'clean-seal',
    `seal|strip|adhesive ** clean|shiny|fiber|fresh; clean|shiny|fresh ** seal|strip|adhesive; fiber tear|pull`,
  ],
  ['granules', `granule; granule loss; blister; bald spot; bald; cup; granular loss`],
  ['bruise', `bruise; soft spot; hail hit|strike|mark|bruise|dent|spot; mat be break|fracture; mat fracture`],
  [
    'high-nail',
    `nail|nailing ** high|overdrive|underdrive|crooked; high nail|nailing; overdrive; over drive; nail ** above|miss
    the line|strip; wrong place nail`,
  ],
  ['stair-step', `stair step; stairstep; rack pattern; column|diagonal of miss|lose`],
  ['wavy', `wavy; waviness; wave; oil can; ripple; ripply`],
  ['dent', `dent; ding; dimple`],
  ['scratch', `scratch; scrape; coating|paint * scratch|scrape|break`],
  ['edge-rust', `cut edge ** rust|corrode|corrosion|rusty; rust|corrosion|corrode ** cut edge|edge; edge creep`],
]

/** Finds what is seen in a sentence; one word can be found under several signs, since parts decide which holds. */
export const signPhrases = phrases(SIGNS)

/** Words of the vocabulary as they are written, for what was misheard. */
export const signWords: readonly string[] = [...new Set(SIGNS.flatMap(([, texts]) => texts.split(/[\s|*;]+/)))]
