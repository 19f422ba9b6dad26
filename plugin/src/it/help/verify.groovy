def log = new File(basedir, 'build.log').getText('UTF-8')
['ricasso:calculate', 'ricasso:check', 'ricasso:explain', 'ricasso:help', 'ricasso:render'].each { assert log.contains(it) }
['attach', 'expression', 'failOnWarning', 'maxProblems', 'name', 'outputDirectory', 'product', 'products', 'reportDirectory', 'skip',
 'sourceDirectory', 'sourceRoot', 'title'].each { parameter ->
    def at = log.indexOf("    ${parameter}")
    assert at >= 0
    assert log.indexOf("User property: ricasso.${parameter}") >= 0
}
assert !log.contains('(no description available)')
true
