parser grammar SpecParser;

options { tokenVocab = SpecLexer; }

// Between lexer and parser the line filter turns NL and ';' into END: none after '{', '(', ',' or an operator, none
// before `else then and or )`, runs folded, always one before '}' (unless '{' stands before it) and the file's end.

file : ( declaration END )* EOF ;

// Texts of their own: a hole of a text, a cell of a table or an expression to calculate.
hole : expr END EOF ;
valueAlone : value END EOF ;

// A line of its own, for reading line by line what cannot be read whole.
declarationAlone : declaration END EOF ;
itemAlone : item END EOF ;
routeItemAlone : routeItem END EOF ;
fieldAlone : field END EOF ;
pieceItemAlone : pieceItem END EOF ;
operationItemAlone : operationItem END EOF ;
needAlone : need END EOF ;
effectAlone : effect END EOF ;
textAlone : STRING END EOF ;
valueEntryAlone : valueEntry END EOF ;
tableItemAlone : tableItem END EOF ;
ruleItemAlone : ruleItem END EOF ;
bindingAlone : binding END EOF ;
wordsItemAlone : wordsItem END EOF ;
wordsLineAlone : wordsLine END EOF ;

declaration
    : KIND head fieldBlock                                   # kindDeclaration
    | WORKPIECE OF word pieceBlock                           # workpieceDeclaration
    | OPERATION head operationBlock                          # operationDeclaration
    | TABLE head tableBlock                                  # tableDeclaration
    | RULE head ruleBlock                                    # ruleDeclaration
    | ROUTE head routeBlock                                  # routeDeclaration
    | WORDS word wordsBlock                                  # wordsDeclaration
    | ( WORD | FAMILY ) head block                           # thingDeclaration
    ;
head : name STRING? ( LIKE like=name )? ( REPLACES replaces=name )? ;
name : word | NUMBER ;                                       // a steel is named by its number
path : word ( DOT word )* ;

// Things and steps.
block : LBRACE ( item END )* RBRACE ;
item
    : path COLON entryValue                                  # entry
    | WORD block                                             # nested
    | ROUTE ( LIKE name )? routeBlock                        # route
    ;
entryValue : value | END grid ;
grid : gridHead ( END gridRow )* ;
gridHead : BAR ( column BAR )+ ;
column : word ( DOT name )* ;                                // route.20.length: a step goes by its number
gridRow : BAR ( cell BAR )+ ;
cell : value? ;

routeBlock : LBRACE ( routeItem END )* RBRACE ;
routeItem
    : ( CHANGE | ADD | OMIT )? step                          # routeStep
    | REWORK NUMBER TO NUMBER block                          # rework
    | PART word LIKE name                                    # partRoute
    ;
step : NUMBER word ( AT name )? block? ;

// What a kind, a part, an operation or a table declares.
fieldBlock : LBRACE ( field END )* RBRACE ;
field : word COLON type mark* ;
type
    : ONE OF LPAREN word ( COMMA word )* RPAREN              # oneOf
    | LIST OF type                                           # listOf
    | word ( ALONG word )?                                   # named
    ;
mark
    : ( OPTIONAL | SIZED | KEY | HOLDS | BETWEEN | FOUND )           # plainMark
    | ( STARTS | DEFAULT | USUAL | WITHIN ) expr             # valueMark
    | MADE AS path                                           # madeAs
    ;

pieceBlock : LBRACE ( pieceItem END )* RBRACE ;
pieceItem : part | field ;
part : PART word STRING? fieldBlock ;

operationBlock : LBRACE ( operationItem END )* RBRACE ;
operationItem
    : TAKES fieldBlock                                       # takes
    | NEEDS needsBlock                                       # needs
    | LEAVES leavesBlock                                     # leaves
    | TIME valueBlock                                        # time
    | INSTRUCT textBlock                                     # instruct
    | valueEntry                                             # operationEntry
    ;
needsBlock : LBRACE ( need END )* RBRACE ;
need : path COLON value ELSE STRING ;
leavesBlock : LBRACE ( effect END )* RBRACE ;
effect : let | path COLON value ;
let : LET word COLON value ;
textBlock : LBRACE ( STRING END )* RBRACE ;
valueBlock : LBRACE ( valueEntry END )* RBRACE ;
valueEntry : word COLON value ;

tableBlock : LBRACE ( tableItem END )* RBRACE ;
tableItem
    : COLUMNS fieldBlock                                     # columns
    | word COLON entryValue                                  # tableEntry
    ;

ruleBlock : LBRACE ( ruleItem END )* RBRACE ;
ruleItem
    : let                                                    # ruleLet
    | REMEDY valueBlock                                      # remedy
    | EXAMPLE word exampleBlock                              # example
    | valueEntry                                             # ruleEntry
    ;
exampleBlock : LBRACE ( binding END )* RBRACE ;
binding : path COLON entryValue ;

// Another language: what stands for the texts that a declaration prints.
wordsBlock : LBRACE ( wordsItem END )* RBRACE ;
wordsItem
    : ( OPERATION | RULE | KIND | ROUTE | WORD ) name STRING? wordsPart   # wordsOf
    | WORKPIECE OF word wordsPart                            # wordsOfWorkpiece
    | path COLON STRING                                      # wordsEntry
    ;
wordsPart : LBRACE ( wordsLine END )* RBRACE ;
wordsLine
    : column COLON STRING                                    # wordsText
    | INSTRUCT textBlock                                     # wordsInstruct
    ;

// Values.
value
    : limit                                                  # limited
    | choice                                                 # chosen
    | expr ( COMMA expr )*                                   # listed
    ;
limit : ( GE | LE ) expr | ( MAX | MIN ) literal ;           // max 0.4 µm; >= and <= take any expression
choice : IF expr THEN expr ELSE ( choice | expr ) ;          // only as a whole value, or in brackets
expr
    : expr DOT word arguments?                               # member
    | ( MINUS | NOT ) expr                                   # prefix
    | expr ( TIMES | SLASH ) expr                            # infix
    | expr ( PLUS | MINUS ) expr                             # infix
    | expr PER name                                          # per
    | expr ( LE | GE | LT | GT | EQ | IN ) expr              # infix
    | expr AND expr                                          # infix
    | expr OR expr                                           # infix
    | word arguments?                                        # nameOrCall
    | LPAREN ( choice | expr ( COMMA expr )* ) RPAREN        # group
    | literal                                                # number
    | DATE                                                   # date
    | STRING                                                 # text
    ;
arguments : LPAREN ( argument ( COMMA argument )* )? RPAREN ;
argument : ( word COLON )? expr ;
literal
    : low=NUMBER lowUnit=unit?
      ( ( PM | DOTS ) high=NUMBER highUnit=unit? | LPAREN upper=NUMBER SLASH lower=NUMBER RPAREN highUnit=unit? )?
    ;
unit : WORD | MIN | SIGN_UNIT ;

// Words that lead a clause somewhere are names elsewhere.
word
    : WORD | ADD | ALONG | AS | AT | BETWEEN | CHANGE | COLUMNS | DEFAULT | EXAMPLE | FAMILY | FOUND | HOLDS | INSTRUCT
    | KEY | KIND | LEAVES | LET | LIKE | LIST | MADE | MAX | MIN | NEEDS | OF | OMIT | ONE | OPERATION | OPTIONAL | PART
    | REMEDY | REPLACES | REWORK | ROUTE | RULE | SIZED | STARTS | TABLE | TAKES | TIME | TO | USUAL | WITHIN | WORDS | WORKPIECE
    ;
