lexer grammar SpecLexer;

// The line filter makes END, which ends an entry, from NL and ';'. No modes, predicates or Java here.
tokens { END }

// Reserved everywhere.
AND : 'and' ;
ELSE : 'else' ;
IF : 'if' ;
IN : 'in' ;
NOT : 'not' ;
OR : 'or' ;
PER : 'per' ;
THEN : 'then' ;

// Lead a clause; still names elsewhere (rule `word`).
ADD : 'add' ;
ALONG : 'along' ;
AS : 'as' ;
AT : 'at' ;
BETWEEN : 'between' ;
CHANGE : 'change' ;
COLUMNS : 'columns' ;
DEFAULT : 'default' ;
EXAMPLE : 'example' ;
FAMILY : 'family' ;
FOUND : 'found' ;
HOLDS : 'holds' ;
INSTRUCT : 'instruct' ;
KEY : 'key' ;
KIND : 'kind' ;
LEAVES : 'leaves' ;
LET : 'let' ;
LIKE : 'like' ;
LIST : 'list' ;
MADE : 'made' ;
MAX : 'max' ;
MIN : 'min' ;
NEEDS : 'needs' ;
OF : 'of' ;
OMIT : 'omit' ;
ONE : 'one' ;
OPERATION : 'operation' ;
OPTIONAL : 'optional' ;
PART : 'part' ;
REMEDY : 'remedy' ;
REPLACES : 'replaces' ;
REWORK : 'rework' ;
ROUTE : 'route' ;
RULE : 'rule' ;
SIZED : 'sized' ;
STARTS : 'starts' ;
TABLE : 'table' ;
TAKES : 'takes' ;
TIME : 'time' ;
TO : 'to' ;
USUAL : 'usual' ;
WITHIN : 'within' ;
WORDS : 'words' ;
WORKPIECE : 'workpiece' ;

STRING : '"' ( '\\' ~[\r\n] | ~["\\\r\n] )* '"' ;           // one token; its {holes} are parsed on their own
BAD_STRING : '"' ( '\\' ~[\r\n] | ~["\\\r\n] )* '\\'? ;     // not closed on its line
DATE : D D D D '-' D D '-' D D ;
NUMBER : SIGN? D+ ( '.' D+ )? ;                              // a sign that touches the digits belongs to them
COMMA_NUMBER : SIGN? D+ ',' D+ ;                             // 1,5: exists for its message
DIGIT_WORD : SIGN? D+ ( '.' D+ )? ( L TAIL* | [°%‰] [CF]? ) ; // 5mm, 30x6, 1e3, 5°C: exists for its message
WORD : L TAIL* ;
SIGN_UNIT : '°' [CF]? ( '/' L+ )? | '%' | '‰' ;
PM : '±' | '+-' | '+/-' ;
DOTS : '..' ;
GE : '>=' | '≥' ;
LE : '<=' | '≤' ;
GT : '>' ;
LT : '<' ;
EQ : '=' ;
PLUS : '+' ;
MINUS : '-' | '\u2212' ;
TIMES : '*' | '×' ;
SLASH : '/' ;
DOT : '.' ;
COMMA : ',' ;
COLON : ':' ;
SEMI : ';' ;
BAR : '|' ;
LBRACE : '{' ;
RBRACE : '}' ;
LPAREN : '(' ;
RPAREN : ')' ;
NL : '\r'? '\n' | '\r' ;
BLANK : [ \t\u00A0\u202F]+ -> skip ;
COMMENT : '//' ~[\r\n]* -> skip ;
STRANGE : . ;

fragment SIGN : [+\-\u2212] ;
fragment D : [0-9] ;
fragment L : [\p{L}_] ;
fragment TAIL : [\p{L}_0-9²³] | '^' D | '·' L | '-' [\p{L}0-9] | '/' L ;
