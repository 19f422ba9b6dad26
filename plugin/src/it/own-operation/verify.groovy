def runs = new File(basedir, 'build.log').getText('UTF-8').split('Scanning for projects')
def readme = new File(house, '../../../../README.md').getText('UTF-8')
def plain = { html -> html.replaceAll('<[^>]*>', ' ').replaceAll(/[\s\u00a0\u202f]+/, ' ') }
def page = { path -> plain(new File(basedir, "target/instructions/${path}").getText('UTF-8')) }
def has = { text, parts -> parts.each { assert text.contains(it) } }

// the check: the blade is hardened, frozen, tempered and measured as before, and nothing stands against it
has(runs[1], ['1 product checked', 'nothing found against', 'BUILD SUCCESS'])

// the pages of both languages
has(page('ab-2120/step-160.html'), ['Soak in liquid nitrogen', 'Cryostat 1, liquid nitrogen', '−180 ± 10 °C', '120 ± 10 min', '2 ± 0.5 K/min',
    'Lower the rack at 2 ± 0.5 K/min', 'faster, the skin cracks over a warm core.', 'oxygen monitor OM-5'])
has(page('de/ab-2120/step-160.html'), ['In Flüssigstickstoff halten', 'Kryostat 1', '2 ± 0,5 K/min', 'Sauerstoffwarngerät OM-5'])
has(page('ab-2120/card.html'), ['Soak in liquid nitrogen'])

// the matrix: the step may change the hardness, which the temper behind it makes
def matrix = new File(basedir, 'target/instructions/ab-2120/coverage.html').getText('UTF-8')
assert plain(matrix).contains('Soak in liquid nitrogen')

// its rule speaks as the README shows it
def told = readme.find(/(?s)```\n(\[ERROR\] [^`]*thick-blades-cool-slowly[^`]*?)\n```/) { all, text -> text }
assert told
assert runs[2].replace('too-fast/', 'src/main/ricasso/').contains(told)
has(runs[3], ['operation nitrogen-soak', 'Soak in liquid nitrogen', 'cooling'])
true
