/** Wording that is outside a contractor's part: patterns, why they are pointed out, and a plain alternative. */
export interface WordingRule {
  readonly patterns: readonly RegExp[]
  readonly why: string
  readonly instead: string
}

/** Who decides or pays in an insurance claim, as people write it. */
const PAYER = String.raw`(?:insurers?|insurance(?:\s+compan(?:y|ies))?|carriers?|adjusters?|underwriters?)`
/** What a claim is about, as the subject of "is covered". Not "roof" or "opening": those are covered with tarps. */
const LOSS = String.raw`(?:damages?|loss(?:es)?|claims?|repairs?|replacements?|storms?|perils?)`
const BE = String.raw`(?:is|are|was|were|should\s+be|will\s+be|would\s+be|must\s+be|ought\s+to\s+be)`

const rule = (patterns: readonly string[], why: string, instead: string): WordingRule => ({
  patterns: patterns.map((pattern) => new RegExp(pattern, 'giu')),
  why,
  instead,
})

/** In the order in which they are tried; sources: guard rails of contractor statutes and this product's own. */
export const wordingRules: readonly WordingRule[] = [
  rule(
    [
      // Coverage by material or of a surface is the trade's word; "not a coverage opinion" is a disclaimer.
      String.raw`(?<!\b(?:tile|granule|adhesive|foam|mortar|paint|coating|sealant|primer|membrane|underlayment|photo|drone|cloud|tree|moss|algae|lichen|surface|area|roof)\s)(?<!\bnot\s(?:a|an|any)\s)\bcoverages?\b(?!\s+(?:per\s+square|of\s+the\s+(?:slope|roof|facet|deck|surface)|of\s+(?:moss|algae|lichen|granules|adhesive|foam|mortar|paint)))`,
      String.raw`\b(?:un|non-?)?covered\s+(?:by|under)\s+(?:the\s+|your\s+|their\s+|his\s+|her\s+|our\s+|any\s+|an?\s+)?(?:\w+\s+)?(?:polic(?:y|ies)|insurance|${PAYER})\b`,
      String.raw`\bcovered\s+(?:loss(?:es)?|perils?|claims?|damages?|causes?\s+of\s+loss|events?|benefits?)\b`,
      String.raw`\b${LOSS}\s+${BE}\s+(?:\w+ly\s+)?(?:not\s+)?covered\b(?!\s+(?:with|in|over|up|on|until|temporarily|the\s+same|from\s+(?:rain|sun)|by\s+(?:an?\s+|the\s+)?(?:tarps?|sheet|boards?|plastic|membrane|roof|estimate|bid|warranty|photos?)))`,
    ],
    'Whether a loss is covered is for the policy’s parties to say.',
    'Describe what was seen and leave coverage out.',
  ),
  rule(
    [
      String.raw`\bpolicy\s+(?:pays?|covers?|provides?|limits?|language|provisions?|terms|wording|requires?|excludes?|exclusions?|states?|allows?|entitles?|benefits?|should|must|will|does)\b`,
      String.raw`\b(?:under|per|according\s+to|pursuant\s+to)\s+(?:the|your|their|his|her|this|our)\s+(?:\w+\s+)?policy\b(?!\s*(?:number|no\b))`,
      String.raw`\bmatching\s+(?:statute|law|clause)\b`,
    ],
    'Reading a policy is not a contractor’s part.',
    'Give the policy number only, and describe the roof.',
  ),
  rule(
    [String.raw`\bdeductibles?\b`],
    'What the owner pays under a policy is not a contractor’s part, and waiving it is unlawful in many places.',
    'Leave it out.',
  ),
  rule(
    [
      String.raw`\bowe[sd]?\b`,
      String.raw`\bowing\b(?!\s+to\b)`,
      String.raw`\b(?:amounts?|benefits?|proceeds)\s+(?:is\s+|are\s+)?(?:due|payable)\b`,
      String.raw`\b(?:actual\s+cash\s+value|replacement\s+cost\s+value|(?:recoverable\s+|non-?recoverable\s+)?depreciation|claim\s+(?:amount|value|proceeds))\b`,
      String.raw`\b(?:ACV|RCV)\b`,
    ],
    'What is owed on a claim is for its parties to say.',
    'Give quantities and the contractor’s own price.',
  ),
  rule(
    [
      String.raw`\btotal(?:ed|led)\b(?!\s+(?:up\b|to\b|about\b|over\b|under\b|\$|\d))`,
      String.raw`\b(?:a\s+)?total\s+loss\b`,
    ],
    '"Total loss" is a claim term.',
    'Say how much of which slope shows what, and how it was counted.',
  ),
  rule(
    [
      String.raw`\b${PAYER}\s+(?:must|should|shall|ought\s+to|has\s+to|have\s+to|needs?\s+to|will\s+(?:pay|cover|approve|replace|reimburse)|is\s+(?:required|obligated|obliged|liable|responsible)|are\s+(?:required|obligated|obliged|liable|responsible)|pays?|denied|refuse[sd]?)\b`,
      String.raw`\b(?:we|I|contractor|owner|owners|insured)\s+(?:hereby\s+)?(?:demands?|insists?)\b`,
      String.raw`\bdemand(?:s|ed|ing)?\s+(?:for\s+)?(?:full\s+|immediate\s+|prompt\s+)*payments?\b`,
      String.raw`\b(?:must|should|shall|has\s+to|please)\s+pay\b`,
      String.raw`\bpay\s+(?:for\s+)?(?:this|the|that|our)\s+(?:claim|loss|damage)\b`,
      String.raw`\bfail(?:s|ure|ed)?\s+to\s+pay\b`,
      String.raw`\bbad[\s-]faith\b`,
      String.raw`\b(?:settl(?:e|es|ed|ing)|negotiat(?:e|es|ed|ing)|adjust(?:ing)?)\s+(?:of\s+)?(?:the|this|your|their|an?)\s+claims?\b`,
      String.raw`\b(?:settlement|negotiation)\s+of\s+(?:the|this|your|their|an?)\s+claims?\b`,
      String.raw`\b(?:handle|file|submit|process)\s+(?:the|your|this|their)\s+claims?\b`,
      String.raw`\bon\s+(?:behalf\s+of\s+the\s+insured|the\s+insured's\s+behalf)\b`,
      String.raw`\bassign(?:ment|s|ed|ing)?\s+(?:of\s+)?(?:the\s+|insurance\s+|your\s+|policy\s+)*benefits\b`,
    ],
    'Telling an insurer what to do, or acting on a claim for the owner, needs a licence a contractor does not hold by trade.',
    'Describe the condition and the work proposed; the owner speaks with the insurer.',
  ),
  rule(
    [
      String.raw`\b${PAYER}(?:'s)?\s+(?:\w+\s+)?(?:is|are|was|were)\s+(?:\w+\s+)?(?:late|overdue|in\s+(?:default|breach))\b`,
      String.raw`\b${PAYER}\s+(?:has\s+|have\s+)?(?:missed|violate[sd]?|breach(?:es|ed)?|ignore[sd]?)\s+(?:the\s+|its\s+|their\s+|a\s+)?(?:statut\w+|deadlines?|law|time\s+limits?|due\s+dates?)\b`,
      String.raw`\b(?:deadline|time\s+limit)\s+(?:for|of)\s+(?:the\s+)?${PAYER}\s+(?:has\s+)?(?:passed|expired|ran\s+out)\b`,
    ],
    'Whether somebody kept a time that a law sets is for the parties and their counsel; a contractor’s record gives no reproach.',
    'Give the dates of what happened.',
  ),
  rule(
    [
      String.raw`\breferral\s+(?:fees?|bonus(?:es)?|rewards?|payments?)\b`,
      String.raw`\b(?:rebates?|cash\s*backs?|gift\s+(?:cards?|certificates?)|vouchers?)\b`,
    ],
    'Something of value for an inspection, a claim or a referral is unlawful for contractors in some states.',
    'Leave it out.',
  ),
  rule(
    [
      String.raw`\bget(?:ting)?\s+(?:your|the|this|a|their|his|her)\s+(?:\w+\s+)?(?:roof|claim|replacement)\s+(?:fully\s+)?(?:approved|paid(?:\s+for)?|bought|covered)\b`,
      String.raw`\b(?:approved|paid\s+for)\s+by\s+(?:the\s+|your\s+|their\s+)?${PAYER}\b`,
      String.raw`\bguarantee[sd]?\s+(?:\w+\s+){0,3}(?:approv\w+|claims?|payments?|payouts?|replacements?)\b`,
      String.raw`(?<!-)(?<!\b(?:leak|moss|debris|damage|algae|stain|trouble)\s)\bfree\s+(?:new\s+)?(?:roof(?:ing)?|roof\s+replacement|inspections?|upgrades?)\b(?!\s+of\b)`,
      String.raw`\b(?:at\s+)?no\s+(?:out[\s-]of[\s-]pocket(?:\s+cost)?|cost\s+to\s+(?:you|the\s+owner|the\s+insured))\b`,
    ],
    'A promise of an outcome or a gift is not part of a record of a roof.',
    'Leave it out.',
  ),
  rule(
    [
      String.raw`\b(?:must|has\s+to|have\s+to|needs?\s+to)\s+be\s+(?:fully\s+|completely\s+|entirely\s+)?replaced\b`,
      String.raw`\b(?:requires?|warrants?|necessitates?|needs?)\s+(?:a\s+)?(?:full|complete|total|entire)\s+(?:\w+\s+)?replacement\b`,
      String.raw`\b(?:full|complete|total)\s+(?:\w+\s+)?replacement\s+is\s+(?:required|necessary|warranted|needed)\b`,
    ],
    'What must be done is a verdict; a contractor proposes work.',
    'Write "replacement proposed" and say why a repair would or would not hold.',
  ),
  rule(
    [
      String.raw`\bcaused\s+(?:\w+ly\s+)?by\b`,
      // A roof that was not walked \"due to wind\" is a plain fact about the visit.
      String.raw`(?<!\b(?:postponed|delayed|stopped|cancell?ed|ended|limited|moved|walked|inspected|accessible|inaccessible|closed|possible)\s+(?:\w+\s+){0,3})\b(?:due\s+to|result(?:s|ed|ing)?\s+(?:from|of)|because\s+of|attributable\s+to)\s+(?:the\s+|this\s+|that\s+|recent\s+|high\s+|strong\s+)*(?:wind\w*|hail\w*|storm|hurricane|tornado|tropical\s+storm|named\s+storm)\b`,
      String.raw`\b(?:proves?\s+(?:that|the|it|wind|storm|hail)|proof\s+of\s+(?:wind|storm|hail|damage|loss|cause)|undoubtedly|unquestionably|without\s+(?:a\s+|any\s+)?doubt|beyond\s+(?:a\s+|any\s+|all\s+)?doubt|indisputabl[ey]|storm[\s-]created\s+opening)\b`,
    ],
    'A cause stated as a fact goes further than a roof survey can.',
    'Write "consistent with ..." or "cause not determined by this survey", and list what was seen.',
  ),
  rule(
    [
      String.raw`\b(?:fails?|failed|failing)\s+(?:the\s+)?(?:building\s+)?code\b`,
      String.raw`\b(?:code\s+violations?|violat(?:es?|ed|ing|ion\s+of)\s+(?:the\s+)?(?:building\s+)?codes?)\b`,
    ],
    'Whether work meets the code is for the building official.',
    'Say what was seen and measured.',
  ),
  rule(
    [String.raw`\bTAS[\s-]*106(?:\s*\([a-z]\))?`],
    'Only an approved testing agency’s work may carry that name.',
    'Write "hand-lift survey", and who did it.',
  ),
]
