import groovy.json.JsonSlurper

def runs = new File(basedir, 'build.log').getText('UTF-8').split('Scanning for projects')
def house = runs[2]
def has = { text, lines -> lines.each { assert text.contains(it) } }

// the library's texts hold by themselves, and its index lists them
has(runs[1], ['0 products checked, 4 texts read: nothing found against them.', '5 texts in the index of the library.'])
def index = new File(basedir, 'vocabulary/target/classes/ricasso/index.txt').getText('UTF-8')
assert index == '''materials/steels.ricasso
materials/tempering.csv
materials/tempering.ricasso
operations/ease-spine.ricasso
rules/rims.ricasso
'''

// the works' house holds with them, and explain says where each piece comes from
has(house, ['1 product checked', 'BUILD SUCCESS',
    'steel 1.4116 "X50CrMoV15, as Ennerdale buys it"',
    'ennerdale-vocabulary-1/ricasso/materials/steels.ricasso:3 (from ennerdale-vocabulary-1, replaces ricasso/materials/stainless-steels.ricasso:',
    'ennerdale-vocabulary-1/ricasso/operations/ease-spine.ricasso:5 (from ennerdale-vocabulary-1)',
    'ennerdale-vocabulary-1/ricasso/materials/tempering.csv:3 (from ennerdale-vocabulary-1): steel 1.4116, chilled no',
    'example.ennerdale.EasedRims (from ennerdale-calculations-1)',
    'ennerdale-vocabulary-1/ricasso/rules/rims.ricasso:3 (from ennerdale-vocabulary-1)'])

// the operator's pages
def page = { step -> new File(basedir, "works/target/instructions/eb-090/step-${step}.html").getText('UTF-8') }
def plain = { html -> html.replaceAll('<[^>]*>', ' ').replaceAll(/\s+/, ' ') }
has(plain(page(175)), ['Ease the spine from ennerdale-vocabulary-1', 'rim-burr from ennerdale-calculations-1'])
has(plain(page(110)), ['tempering-loss from ennerdale-vocabulary-1 , in place of what is shipped',
    'as Ennerdale buys it from ennerdale-vocabulary-1 , in place of what is shipped'])
assert !page(190).contains('ennerdale-')
has(plain(new File(basedir, 'works/target/instructions/eb-090/index.html').getText('UTF-8')),
    ['as Ennerdale buys it from ennerdale-vocabulary-1 , in place of what is shipped'])

// the model
def json = new JsonSlurper().parse(new File(basedir, 'works/target/ricasso/house.json'), 'UTF-8')
def steel = json.things.find { it.kind == 'steel' && it.name == '1.4116' }
assert steel.written.library == 'ennerdale-vocabulary-1'
assert steel.replaces.file == 'ricasso/materials/stainless-steels.ricasso' && steel.replaces.library == null
assert json.operations['ease-spine'].written.library == 'ennerdale-vocabulary-1'
assert json.operations['temper'].written.library == null
assert json.rules['eased-rims-are-smooth'].written.library == 'ennerdale-vocabulary-1'
assert json.tables['tempering-loss'].rowsBefore*.written*.line == [2, 3, 4]
assert json.calculations['rim-burr'].library == 'ennerdale-calculations-1'
assert json.calculations['rim-burr']['class'] == 'example.ennerdale.EasedRims'
def steps = json.products[0].steps
assert steps.find { it.operation == 'temper' }.toString().contains('ennerdale-vocabulary-1/tempering.csv lines 2, 3, 4')
assert steps.find { it.operation == 'ease-spine' }.leaves['blade.burr'].computed.found[0].source.contains('rim-burr of ennerdale-calculations-1')

// two libraries that do not go together
has(runs[3], ['operation ease-spine is declared twice', 'rival-vocabulary-1/ricasso/rival.ricasso', 'first here',
    'one is from rival-vocabulary-1, the other from ennerdale-vocabulary-1', 'BUILD FAILURE'])
has(runs[4], ['The libraries that the plugin is given cannot be used: the calculation rim-burr is offered twice, by '
    + 'example.ennerdale.EasedRims in ennerdale-calculations-1 and by example.rival.OtherRims in rival-calculations-1: take one'])
assert !runs[3].contains('\tat ') && !runs[4].contains('\tat ')
true
