def log = new File(basedir, 'build.log').getText('UTF-8')
['ricasso:calculate', 'ricasso:check', 'ricasso:explain', 'ricasso:format', 'ricasso:format-check', 'ricasso:help', 'ricasso:index', 'ricasso:reference', 'ricasso:render', 'ricasso:solve', 'ricasso:words'].each { assert log.contains(it) }
['attach', 'expression', 'failOnWarning', 'files', 'language', 'languages', 'maxProblems', 'name', 'outputDirectory', 'product', 'products', 'referenceDirectory', 'reportDirectory', 'skip', 'skipLayout',
 'sourceDirectory', 'sourceRoot', 'title', 'wordsDirectory'].each { parameter ->
    def at = log.indexOf("    ${parameter}")
    assert at >= 0
    assert log.indexOf("User property: ricasso.${parameter}") >= 0
}
assert !log.contains('(no description available)')
true
