import groovy.json.JsonSlurper

def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.count('] error: ') == 1
assert log.contains('  src/main/ricasso/steels/trial.ricasso:3:5\n  3 |     clas:       stainless\n    |     ^^^^')
assert log.contains('remedy   ')
assert log.contains('15 products checked')
assert log.contains('The house below src/main/ricasso has 1 error')
assert log.contains('BUILD FAILURE')
assert !log.contains('Exception:') && !log.contains('\tat ')
// what does not check has no pages
assert !new File(basedir, 'target/instructions').exists()

def result = new JsonSlurper().parse(new File(basedir, 'target/ricasso/report.sarif'), 'UTF-8').runs[0].results
        .find { it.level == 'error' }
def place = result.locations[0].physicalLocation
assert place.artifactLocation.uri.endsWith('src/main/ricasso/steels/trial.ricasso')
assert place.region.startLine == 3 && place.region.startColumn == 5 && place.region.endColumn == 9
true
