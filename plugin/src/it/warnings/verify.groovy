def log = new File(basedir, 'build.log').getText('UTF-8')
def runs = log.split('Scanning for projects')
assert runs.length == 3
assert !log.contains('] error: ')
// the first run passes, prints one finding and says where the others are
assert runs[1].contains('BUILD SUCCESS')
assert (runs[1] =~ /\[(WARNING|INFO)\] (warning|note): /).count == 1
assert runs[1] =~ /\d+ further findings? in target\/ricasso\/report\.sarif\./
// the second prints all and fails
assert runs[2].contains('BUILD FAILURE')
assert runs[2].contains('[WARNING] warning: little-carbon\n')
assert runs[2] =~ /The house below src\/main\/ricasso has \d+ warnings?( and \d+ notes?)?, and ricasso\.failOnWarning is set/
assert runs[2].contains(', or ask why with: mvn ricasso:explain -Dricasso.name=')
def rule = new groovy.json.JsonSlurper().parse(new File(basedir, 'target/ricasso/report.sarif'), 'UTF-8')
        .runs[0].tool.driver.rules.find { it.id == 'little-carbon' }
assert rule.shortDescription.text == 'A steel has little carbon'
assert rule.fullDescription.text.contains('it is asked for to see a warning')
assert !log.contains('Exception:') && !log.contains('\tat ')
true
