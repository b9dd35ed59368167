import { phrases } from '../words/phrases.ts'

/** How something is said, rather than what. */
export type Stance =
  /** Says that something is not so. */
  | 'not'
  /** Sounds like a negation and is none. */
  | 'no-negation'
  /** Wish, question, plan, hearsay, habit: nothing that was seen here and now. */
  | 'unreal'
  /** Sounds unreal and is none. */
  | 'real'
  /** From here on the sentence speaks of a cause or compares. */
  | 'opinion'
  /** Names what may have caused it. */
  | 'cause'
  /** Takes back what was said. */
  | 'retract'
  /** What follows takes the place of what was said before. */
  | 'correct'
  /** What was seen is something harmless. */
  | 'harmless'
  /** Tells somebody to do something. */
  | 'order'
  /** Another house, another day. */
  | 'elsewhere'
  /** Things that are no part of a roof. */
  | 'foreign'
  /** Points at something that was named or is in front of the speaker. */
  | 'pointing'

const STANCES: readonly (readonly [Stance, string])[] = [
  [
    'not',
    `not; no; none; never; nothing; without; neither; nor; free of; free from; zero; hardly any; absence of; no sign
    of; rule out; instead of; rather than`,
  ],
  [
    'no-negation',
    `no doubt; no question; not just|only|merely; no wonder; not to mention; no matter; not sure|know|certain; do not
    know; why not; or not; not go to count|lie; not count; can not count|believe; nothing but; no idea; not bother;
    no less|fewer than; not less|fewer than; not sure how many; no reason; no nail|screw|fastener; no
    bond|adhesion|contact; not one but; no more than; not move for; do not think it could be more; if not more; not
    mark; not far`,
  ],
  [
    'unreal',
    `report|letter|estimate|survey|paper say|mention|claim|state; i|we be tell; supposedly; apparently; allegedly; reportedly; see which; what we|i do be; when the|a wind|storm|water|rain|sun|tile|cap; when wind|water|rain; mean to be; if; whether; check for|if|whether|the|that|to|and|on; look|search|hunt|watch out for; look|watch for; let me|us
    check|see|look|try|test|feel|go|slip|slide|lift|pull|squeeze|move|get|grab|wipe|fix|work|scoot|crawl|climb|set|put|lean|kneel;
    every|any|most roof|house|job|inspection; crack|tile|roof|cap like this|that|these|those take|cost|run|need|weigh; take years; might; may; could; would; should; will; go to; gonna;
    need|have|want|like|try|suppose to; usually; normally; typically; generally; sometimes; often; tend to; when
    you|people|they|somebody|anybody|someone; they|he|she|owner|homeowner|neighbor|adjuster|customer
    say|tell|mention|claim|report|hear; owner|homeowner be; say there|that|they|he|she; tell me|us|you|him; accord
    to; used to; any; anything; anyone; unless; until; make sure; be careful; suppose; imagine; as long as; would
    be; how many; why; worry about; afraid; expect; hope; wonder; did you; do you; have you; be there; question be;
    ever; i|we thought; in my experience; always; in general; over time; look|seem|appear ** from down|below|the ground|there;
    look|seem|appear|sound ** but ** be not|fine|okay|ok|just|only|good|solid|tight; prevent; avoid; before it|they; otherwise; almost; nearly; about to; remember when; will be; in case; can
    you; could you; please; every time; where would; which would`,
  ],
  [
    'real',
    `if you follow|look|come|notice|zoom; let me tell|say; that|which|they|it|one will lift|move|come|rock|slide|wiggle|wobble; i|we would say|call|guess|put|estimate|reckon|have; as you|we will see; you will see|notice; i will
    say|call|put; i have to say; have to admit|be; i|we say; not go to; as far as; i can|could see; you can|could
    see|tell|feel|push|lift|move|wiggle; can|could see; look like; have to be; any effort|more; barely|hardly any;
    as if; like to point|note|show|mention; want to point|note|show|mention|be|say; if you
    look|see|stand|face|be|ask|look|come|go|pull|push|put|count|lift|touch|press|can|get; if i|you
    put|pull|push|lift|press|count|touch|get|grab|tug|slide|slip|stick|reach|nudge|hook|take|lean|work|run|set|give|rock; when you|i|we grab|lift|pull|push|touch|press|tap|step|walk|put; go to
    say|call|note|mark|count; will note|mark|count; could|can be see|lift|move; make note; need replace; i|you
    could|can lift|move|push|pick|slide|wiggle|count|put|fit|stick; almost|nearly
    all|every|half|out|off|gone|through|whole; about to fall|go|drop|come; nearly|almost *
    inch|foot|pound|dozen|ten; could|can pull|get * finger|hand; you may|will notice|see; have|need to
    note|mention|mark|write; any force|pressure; when * be|come up|lift; no trouble; how many i; more than|any other`,
  ],
  [
    'opinion',
    `because; cause by; due to; on account of; result of; consistent with; in my|our opinion|view|book|judgment;
    my|our opinion|guess|view|theory|hunch|feeling|thinking|belief; if you ask me; i
    suspect|reckon|bet|figure|suppose; probably|likely|maybe|perhaps|possibly
    from|somebody|someone|when|due|cause|wind|old|because|storm|foot|age|whoever|they; must have; may|might|could
    have be; most likely; more than likely; which tell; that tell; tell me that; look like
    somebody|someone|they|foot|wind|storm|whoever|hail|old; look like the|a
    wind|storm|hail|tree|branch|gust|installer|roofer; look|seem to me like;
    worse|better|more|less|older|newer|bigger|smaller|rougher|far|fewer * than; a lot|bit|little worse|better; much
    worse|better; compare to|with; same as|like|story; just|exactly like the|on|that|what; as bad|good|many|much as;
    unlike; i do not think|believe; way too|more|worse; so i think|believe|would; be why; that be why|how; come
    from; thanks to; blame; seem to have be; attribute to; indicate; suggest`,
  ],
  [
    'cause',
    `wind; storm; hurricane; gust; uplift; foot traffic; footstep; step on; walk on; somebody|someone|people
    walk|step; hail; installer; install|installation; workmanship; old age; age; wear and tear; settle; settlement;
    thermal; expansion; heat; maintenance; lack of; neglect; blow in; the weather; tree hit; tropical; tornado;
    rain; sun; vibration; flying debris; squirrel; raccoon; rat; satellite guy|installer; cable guy; manufacturer`,
  ],
  [
    'retract',
    `not * our department|problem|concern|job|scope|business; scratch|strike|forget|disregard|ignore|delete|erase|cancel|scrap|drop that|it|this|what;
    scratch|strike|forget|disregard|ignore|delete|erase|cancel|scrap|drop the|my|that last|previous; disregard;
    never mind; nevermind; take * back; my mistake|bad|error; i * wrong; i * mistake|misspeak|misread|miscount; be
    mistaken; false alarm; do not count|write|put|record|include|log that|it|this|them; leave that|it|this out; not
    after all; no it|that|this|there|they|those|these be not; that be wrong|incorrect; withdraw; it be nothing; that be nothing; never happen; i
    take; pay no attention; do not worry about`,
  ],
  [
    'correct',
    `i mean; make that|it; correction; sorry; no wait; wait no; or rather; actually; hold on; excuse me; should be;
    change that to; let me correct; well actually; no no; not that; pardon; my mistake it; oops; better say;
    let me correct|fix|restate|redo|rephrase; i should say; i stand correct; on second thought; make it; check that; should have say; mean to say; i mean|meant;
    instead; no it be; no that be; no they be; no hold; say`,
  ],
  [
    'harmless',
    `just|only|merely * lichen|moss|algae|sap|tar|scratch|scuff|mark|line|cut|lap|print; shadow; cobweb; spider web; spiderweb; line of dirt; dirt; stain; water mark|stain; bird dropping; dropping;
    paint; leaf; hair; string; shade; reflection; glare; mud; seam line; mold line; joint line; trick of the light;
    just how|the way; just|only a|an dark|darker|light|lighter|cut|half|short|shorter|small|different one|tile|piece; cut tile|piece|that; cut to|around; make|lay that way; suppose to be; design; by design; factory edge; always like|be; pencil|chalk line; dust;
    optical; pollen; texture; normal; bird; caulk line; surface mark`,
  ],
  [
    'order',
    `mind|watch the|that|this|those; get|take|grab|snap|shoot * picture|photo|shot|close|video|pic; zoom in|out; hold the|it|this|that|still|my; move
    the|that|your; hand me; watch your|out|it|that; do not step|walk|touch|stand; come over|here|closer|round; point
    the|your|it; pan left|right|over|up|down|across; turn the|it|around; keep recording|rolling|filming|going;
    stop|start recording|rolling|filming; bring me|the|that; pass me; give me; write that|this|it; look out; one
    more picture|photo|shot; mark that|this|it; mind the|your; throw me|that; film that|this|it; did you get; are
    you get; stay there|back|off; climb up|down; go get`,
  ],
  [
    'elsewhere',
    `neighbor; next door; across the street; other|another|different|previous house|job|roof|place|home|building;
    down the street|block|road; last week|year|month|job|night|time|house|inspection; yesterday; earlier today;
    years ago; one time; house we|i do|did; this morning we; on the way over|here|up|in|home|to work; back at the;
    at home; at the office; tomorrow; later; after lunch; next week|time|month; the other day; on
    monday|tuesday|wednesday|thursday|friday|saturday|sunday`,
  ],
  [
    'foreign',
    `windshield; phone; camera; screen; battery; truck; car; van; ladder; glove; hat; shirt; knee; ankle; elbow;
    shoulder; glass; bottle; patio; fence; pool; mailbox; dog; lunch; coffee; drone; harness; rope; hose; shoe;
    my|your|his|other|these|new boot; my|your foot|leg|back|hand|arm|head|finger; gauge; microphone; recorder;
    radio; tape measure; clipboard; pen; pencil; notebook; backpack; bag; bucket; breath; garage door; driveway; car
    door; door bell; air conditioner; ac unit; ceiling; interior; bedroom; kitchen; lawn; bush; parking; traffic be;
    street; road; lawn; sidewalk; neighborhood; memory card; sd card; watch; sunglasses; sunscreen; zipper; signal`,
  ],
  [
    'pointing',
    `this; that; these; those; it; they; them; one; ones; another; here; both; all; rest; here be; there be; more;
    few; several; couple; some; also; too; again; each; pair; handful; bunch`,
  ],
]

/** Finds how things are said. */
export const stancePhrases = phrases(STANCES)
