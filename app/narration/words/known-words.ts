import { partWords } from './component-words.ts'
import { signWords } from './condition-words.ts'
import { plainWords } from './plain-words.ts'
import { remembered } from './remembered.ts'
import { stem } from './stem.ts'

/** Common English that must not be taken for a misheard word of the trade. */
const COMMON = `a about above across act add after again against age ago air all almost along also always am an and another any
anybody anyone anything anyway apart are area arm around as ask at away baby back bad bag ball bar base basic bath be bear beat because
been before begin behind being believe below bench beside best better between big bird bit black blanket block blood blue board boat
body book both bottom bought bowl box boy break breath brick bridge bright bring brother brought brown build building built business
busy but butter button buy by cable call came camera can car card care carry case cat catch caught cell center certain chain chair
change channel charge check child church circle city claim class clean clear client clip close cloth cloud coat coffee cold color come
company complete concrete condition contractor cook cool copy corner cost could count country couple course cousin cover crew cross
crowd cup current curtain cut dark date daughter day dead deal dear decide deep degree different dinner dirt dish do doctor does dog
door double doubt down draw dream dress drink drive drop dry due during dust each ear early earth east easy eat edge effort eight
either else empty end engine enough even evening ever every exactly eye face fact fair fall family far fast father favor feather feel
few field fill final find fine finger finish fire first fish fit five fix flat flight floor flow flower fly follow food foot for force
forget form forward found four free fresh friday friend from front fruit full funny game garage garden gas gave get girl give glad
glass glove go goes gold gone good got grab grass gray great green ground group grow guess guy had hair half hall hammer hand handle
hang happen happy hard has hat have he head hear heard heart heat heavy held hello help her here hey high hill him hip his hit hold
hole home honest honey hope hose hot hour house how huge hundred hurry hurt husband i ice idea if important in inch inside instead
into iron is issue it item its jacket job join just keep kept key kick kid kind kitchen knee knew knock know lady lake land language
large last late later laugh law lay lead leaf learn least leather leave left leg less let letter level lie life lift light like line
list listen little live load local long look lose loss lot loud love low lower lucky lunch machine mad made mail main make man many
map mark market master matter may maybe me mean measure meat meet member men mention metal middle might mile milk mind minute miss
mister moment monday money month more morning most mother motor mouth move movie much music must my name narrow near neck need neither
never new news next nice night nine no noise none noon nor normal north nose not note nothing notice now number of off offer office
often oil okay old on once one only open or orange order other our out outside over own owner page paid pain paint pair pan paper
park part party pass past path pay peace people perfect perhaps person phone photo pick picture piece pile pin place plan plane plant
plate play please plenty point pole pool poor porch position possible pound power present press pretty price print probably problem
project property proper pull push put quarter question quick quiet quite rain raise ran rather reach read ready real reason red
remember rest rich ride right ring river road rock roll roof room rope rough round row rule run sad safe said salt same sand saturday
saw say scale school sea season seat second see seem seen self sell send sense serious service set settle seven several shade shadow
shake shape share sharp she sheet ship shirt shoe shop short shot should shoulder show shower shut sick side sight sign silver simple
since sing single sister sit six size skin sky sleep slide slip slope slow small smell smile smooth snow so soap soft soil sold some
son song soon sort sound south space speak special speed spend spot spring square stack staff stair stand star stare staring start state station
stay step stick still stone stood stop store storm story straight strange street strike strip strong stuff such sugar suit summer sun
sunday supper sure surface sweet swim table tail take talk tall tank tape taste tea teach team tell ten test than thank that the their
them then there these they thick thin thing think third thirsty this those though thought thousand three threw through throw thumb
thursday ticket tie till time tin tiny tired title to today together told tomorrow tongue too took tool tooth top touch toward towel
town track trade train tree trip trouble truck true trust try tuesday turn twelve twenty two type uncle under understand unit until up
upon us use usual valley value van very view visit voice wait walk wall want warm was wash watch water way we wear weather wednesday
week weight well went were west wet what wheel when where whether which while white who whole why wide wife will wind window winter
wire wish with without woman wonder wood word work world worry worse worst would write wrong yard year yellow yes yesterday yet you
young your yourself zero slather slathered smear strap shingle thunder flood flash crash trash splash fashion passion mission fasten listen master faster plaster matter
batter better bitter butter litter motor mower border hotter mortal moral flushing blushing ladder latter leather lather weather
whether rather gather father cider rider wider spider sister mister twister blister pester poster roster rooster booster tester
taster toaster hoist moist twist trust crust frost forest honest harvest modest hidden sudden golden wooden garden pardon burden
kitten mitten cotton carton button bottom eleven given living moving giving having saving being doing going seeing saying lying
tying dying trying crying flying frying kilo kilos kilogram kilograms millimeter millimeters centimeter centimeters newton newtons percent meters bunch lunch punch branch pinch wrench trench french english street middle lots plenty handful gauge gauges pounds pound feet inches inch tape laser meter okay yeah wow hmm anyway alright hello yep nope gonna wanna kinda sorta everybody everything somewhere
something sometimes afternoon birthday driveway neighbor homeowner inspector adjuster insurance owner couldn wouldn shouldn didn doesn isn aren wasn weren hasn haven hadn`

const known = new Set(
  [...COMMON.split(/\s+/), ...plainWords, ...partWords, ...signWords].flatMap((word) => [word, stem(word)]),
)

/** True for a word that needs no second guess: common English, or a word of the trade as it is written. */
export const isKnownWord = remembered((word) => known.has(word) || known.has(stem(word)))
