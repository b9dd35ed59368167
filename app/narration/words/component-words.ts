import type { ComponentKey } from '../../evidence/catalog/keys.ts'
import { phrases, phraseTexts } from './phrases.ts'

/** A part of a roof as it is said. "Cap" may be a ridge's or a hip's; a bare "ridge" names an edge more often than its caps. */
export type SaidPart = ComponentKey | 'cap' | 'edge-ridge' | 'edge-hip' | 'edge-rake' | 'edge-eave' | 'edge-valley'

const CAP = 'cap|tile|piece|roll|unit|trim'

/** Everyday words for the catalog's parts, first and last word of each in any inflection. */
const PARTS: readonly (readonly [SaidPart, string])[] = [
  ['field-tile', `tile; field|roof|flat|barrel|pan|cover|clay|concrete tile; field; piece of tile; tile piece`],
  ['ridge-tile', `ridge ${CAP}; ridge cap tile; ridge line cap|tile; ridgecap`],
  ['hip-tile', `hip ${CAP}; hip cap tile; hip line cap|tile; hipcap`],
  ['cap', `cap; cap tile|piece; trim tile`],
  ['rake-tile', `rake|gable|verge|barge ${CAP}; rake edge tile|cap; gable end tile|cap`],
  [
    'eave-tile',
    `eave|starter|edge tile; first|starter|bottom|lowest course|row; first|starter|bottom course|row tile; eave
    course|row`,
  ],
  [
    'eave-closure',
    `eave closure|riser|filler|plug; bird stop|stopper; birdstop; closure; closure strip|piece; eave riser metal`,
  ],
  ['headlap', `head lap; headlap`],
  [
    'sidelap',
    `side lap|lock|rib|channel; sidelap; sidelock; interlock; interlock rib|edge|channel; lock rib|edge|channel;
    lock; water channel|lock`,
  ],
  ['nose', `nose; butt|leading end|edge; nose end|edge; tile nose; nose of the tile`],
  ['head-lugs', `lug; head|hanging|anchor lug; tile head; head of the tile`],
  ['batten', `batten; batten board|strip; furring strip`],
  [
    'fastener',
    `fastener; nail; screw; nail|screw|fastener head; clip; hurricane|storm|wind clip; tie wire; wire tie; staple;
    roof|tile nail|screw`,
  ],
  [
    'mortar-bed',
    `mortar; mortar bed|joint|bedding|line|pack|collar|fillet|skirt; collar; fillet; bedding; bedding mortar; grout; pointing; mud; cement
    around|collar|bed|bedding|joint|line|fillet|base`,
  ],
  [
    'adhesive-pad',
    `foam pad|patty|paddy|adhesive|bead|daub; adhesive pad|foam|patty|paddy; foam; adhesive; glue; pad; paddy; patty;
    mortar pad|patty|paddy|daub`,
  ],
  ['nailer', `nailer; nailer board; ridge|hip nailer|board|channel; nail board`],
  [
    'underlayment',
    `underlayment; under layment; felt; felt paper; roof|roofing felt|paper|membrane; membrane; tar paper; peel and
    stick; moisture|water barrier; base sheet; cap sheet; dry in; paper`,
  ],
  ['deck', `deck; roof deck; decking; sheathing; plywood; osb; roof board`],
  ['valley-metal', `valley metal|flashing|pan|liner|tin|steel; metal valley; valley`],
  [
    'flashing',
    `flashing; counter|apron|chimney|skylight|wall|metal|kick|roof|dormer flashing; counterflashing; flashing metal;
    sheet metal`,
  ],
  ['step-flashing', `step flashing; stepped flashing`],
  ['headwall-flashing', `head wall flashing; headwall; headwall flashing|metal`],
  [
    'pipe-penetration',
    `pipe; vent|plumbing|soil|drain|exhaust|stand pipe|stack; plumbing vent; pipe
    boot|jack|flashing|penetration|sleeve; lead boot|jack|collar|pipe; boot; vent pipe
    boot|jack|collar|flashing; stack; vent stack; stack boot|flashing; penetration; roof jack; boot on|of|at
    the|that * pipe|stack`,
  ],
  [
    'vent',
    `vent; roof|ridge|exhaust|attic|box|turtle|off|static vent; off ridge vent; vent hood|cover|cap; goose neck;
    gooseneck; turbine; turbine vent; louver; whirlybird`,
  ],
  ['skylight', `skylight; sky light; roof window; solar|sun tube; skylight dome|lens|frame`],
  ['chimney', `chimney; chimney stack|crown|top|cap|flue`],
  ['cricket', `cricket; saddle`],
  ['drip-edge', `drip edge|metal; eave metal|drip|flashing; edge metal; metal edge; drip`],
  ['fascia', `fascia; fascia board; facia; facia board`],
  ['gutter', `gutter; rain|eave gutter; downspout; down spout; eavestrough`],
  ['shingle-field', `shingle; field|asphalt|architectural|laminate shingle`],
  ['shingle-tab', `tab; shingle tab; three tab`],
  ['seal-strip', `seal|sealant|tar|adhesive|glue strip|line; self seal; seal`],
  ['hip-ridge-shingle', `ridge|hip shingle; hip and ridge shingle; ridge|hip cap shingle; cap shingle`],
  ['starter-strip', `starter strip|shingle`],
  ['panel', `panel; metal panel|sheet; roof panel`],
  ['seam', `seam; standing seam; panel seam`],
  ['ridge-flashing', `ridge|hip metal|flashing`],
  ['rake-trim', `rake|gable trim|metal|flashing`],
  ['eave-cleat', `cleat; eave cleat`],
  ['exposed-screw', `exposed|panel screw|fastener`],
  ['washer', `washer; screw|rubber washer; gasket`],
  ['edge-ridge', `ridge; ridge line; ridgeline`],
  ['edge-hip', `hip; hip line`],
  ['edge-rake', `rake; rake edge; gable edge`],
  ['edge-eave', `eave; eave line|edge`],
]

/** Finds parts of a roof in a sentence. */
export const partPhrases = phrases(PARTS)

/** Pairs of words that name a part together: where one is plain, the other may be misheard. */
export const partPairs: readonly (readonly [string, string])[] = PARTS.flatMap(([, texts]) =>
  phraseTexts(texts).flatMap((text) => {
    const [first = '', second = '', ...rest] = text.split(' ')
    if (second === '' || rest.length > 0 || text.includes('*')) return []
    return first.split('|').flatMap((a) => second.split('|').map((b) => [a, b] as const))
  }),
)

/** Words of the vocabulary as they are written, for what was misheard. */
export const partWords: readonly string[] = [...new Set(PARTS.flatMap(([, texts]) => texts.split(/[\s|*;]+/)))]

/** Parts that are counted by the piece; of the rest one says how long or how large. */
const UNCOUNTED: ReadonlySet<SaidPart> = new Set<SaidPart>([
  'mortar-bed',
  'underlayment',
  'deck',
  'valley-metal',
  'flashing',
  'step-flashing',
  'headwall-flashing',
  'drip-edge',
  'fascia',
  'gutter',
  'headlap',
  'edge-ridge',
  'edge-hip',
  'edge-rake',
  'edge-eave',
  'nailer',
  'chimney',
])

/** True when "a" or "this" before the part means one of it. */
export function isCounted(part: SaidPart): boolean {
  return !UNCOUNTED.has(part)
}
