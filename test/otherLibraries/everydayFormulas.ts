/** Values of the cells that the formulas read, by address. */
export const CELLS: Readonly<Record<string, number | string | boolean>> = {
  H1: "Client",
  I1: "Tax",
  J1: "Paid",
  K1: "Due",
  H2: "Adams",
  I2: 12500.5,
  J2: 9000,
  K2: 46127,
  H3: "Baker",
  I3: 830,
  J3: 900,
  K3: 46310,
  H4: "clark",
  I4: 0,
  J4: 0,
  K4: 46188,
  H5: "Davis",
  I5: 48211.27,
  J5: 20000.1,
  K5: 46127,
  H6: "Evans",
  I6: "n/a",
  J6: 150,
  K6: 46127,
  H7: "Adams",
  I7: 77.005,
  J7: 60,
  K7: 46310,
  H8: "=sum",
  I8: "12",
  J8: 75,
  K8: 45762,
  M1: "Paid",
  M2: ">500",
  L2: 0.1,
  L3: 0.2,
  L4: 0.3,
  L5: -2.5,
  L6: 1e-7,
};

/** Formulas whose results in LibreOffice are not those of Excel, with the result of Excel. */
export const OTHERWISE_IN_EXCEL: Readonly<Record<string, string>> = {
  // Excel joins a truth value as a word (documentation of CONCATENATE).
  'CONCATENATE("a",1,TRUE)': "a1TRUE",
};

const lines = (text: string): string[] => text.trim().split(/\s*\n\s*/);

/** Formulas as they are in a preparer's workbooks, by subject. */
export const EVERYDAY: readonly string[] = lines(`
  SUM(I2:I8)
  SUM(I2,I6,I8)
  SUM(I2:I5,J2:J5,100)
  SUM(I2:I5*1)
  AVERAGE(I2:I8)
  AVERAGE(I2,I6)
  MIN(I2:I8)
  MAX(J2:J8)
  MAX(0,I3-J3)
  MEDIAN(J2:J6)
  COUNT(I2:I8)
  COUNTA(I2:I8)
  COUNTBLANK(H1:H20)
  LARGE(J2:J6,2)
  SMALL(J2:J6,2)
  RANK(J2,J2:J6)
  STDEV(J2:J6)
  VAR(J2:J6)
  PRODUCT(L2:L4)
  SUMSQ(L2:L5)
  MODE(K2:K8)
  PERCENTILE(J2:J6,0.25)
  QUARTILE(J2:J6,3)
  CORREL(J2:J5,K2:K5)
  SUMPRODUCT(J2:J5,L2:L5)
  SUMPRODUCT((H2:H8="Adams")*J2:J8)
  SUMPRODUCT((H2:H7="Adams")*(K2:K7>46200)*J2:J7)
  SUMPRODUCT(--(K2:K8=46127))
  SUMIF(H2:H8,"Adams",J2:J8)
  SUMIF(J2:J8,">500")
  SUMIF(H2:H8,"*a*",J2:J8)
  SUMIF(H2:H8,H2,I2:I8)
  SUMIFS(J2:J8,H2:H8,"Adams",K2:K8,"<46200")
  COUNTIF(H2:H8,"adams")
  COUNTIF(I2:I8,0)
  COUNTIF(I2:I8,">=830")
  COUNTIF(H2:H8,"?aker")
  COUNTIF(I2:I8,"<>0")
  COUNTIF(I2:I8,"12")
  COUNTIFS(H2:H8,"Adams",J2:J8,">0")
  AVERAGEIF(H2:H8,"Adams",J2:J8)
  AVERAGEIFS(J2:J8,K2:K8,46127)
  MAXIFS(J2:J8,K2:K8,46127)
  MINIFS(J2:J8,K2:K8,46127)
  SUBTOTAL(9,J2:J8)
  SUBTOTAL(3,H2:H8)
  ROUND(I7,2)
  ROUND(2.5,0)
  ROUND(-2.5,0)
  ROUND(1.005,2)
  ROUND(I2*0.0765,2)
  ROUND(1234.567,-2)
  ROUNDUP(I2,0)
  ROUNDUP(-1.21,1)
  ROUNDDOWN(I2,0)
  ROUNDDOWN(4.35*100,0)
  ROUNDUP(1.1*3,1)
  INT(L5)
  INT(0.29*100)
  TRUNC(L5)
  TRUNC(4.35*100)
  MROUND(12.5,5)
  MROUND(1.05,0.1)
  CEILING(1.1*3,0.1)
  CEILING(I2,50)
  FLOOR(I2,50)
  MOD(10,3)
  MOD(-10,3)
  MOD(10,-3)
  MOD(0.3,0.1)
  QUOTIENT(10,3)
  ABS(L5)
  SIGN(L5)
  SQRT(2)
  POWER(1.07,5)
  2^0.5
  -2^2
  2^3^2
  EXP(1)
  LN(10)
  LOG10(1000)
  LOG(8,2)
  EVEN(1.5)
  ODD(1.5)
  GCD(12,18)
  LCM(4,6)
  FACT(5)
  COMBIN(5,2)
  PI()
  SIN(1)
  DEGREES(PI())
  0.1+0.2=0.3
  L2+L3=L4
  L2+L3-L4=0
  1/3*3=1
  I2-J2
  I2*22%
  I6&" "&I2
  1/0
  I6+1
  I8+1
  A30&"x"
  "3"*2
  "$1,000"+1
  TRUE+1
  IF(I2>J2,I2-J2,0)
  IF(I7="","blank","filled")
  IF(A30="","blank","filled")
  IF(A30=0,"zero","other")
  IF(H2="ADAMS",1,2)
  IF(EXACT(H2,"ADAMS"),1,2)
  IFERROR(1/0,"none")
  IFERROR(VLOOKUP("Zed",H2:J8,2,FALSE),0)
  IFNA(MATCH("Zed",H2:H8,0),"none")
  IFS(I2>20000,"high",I2>1000,"middle",TRUE,"low")
  SWITCH(H3,"Adams",1,"Baker",2,0)
  AND(I2>0,J2>0)
  OR(I2<0,J2>0)
  NOT(TRUE)
  XOR(TRUE,FALSE,TRUE)
  ISNUMBER(I6)
  ISTEXT(I6)
  ISBLANK(A30)
  ISERROR(1/0)
  ISNA(NA())
  ISLOGICAL(TRUE)
  N(TRUE)
  T(I2)
  TYPE(I6)
  VLOOKUP("Baker",H2:J8,2,FALSE)
  VLOOKUP("B*",H2:J8,3,FALSE)
  VLOOKUP(46200,K2:K8,1,TRUE)
  HLOOKUP("Tax",H1:K8,3,FALSE)
  INDEX(J2:J8,MATCH("clark",H2:H8,0))
  INDEX(H2:K8,2,4)
  MATCH("Davis",H2:H8,0)
  MATCH(1000,J2:J3,-1)
  LOOKUP(2,1/(H2:H8="Adams"),J2:J8)
  CHOOSE(2,"a","b","c")
  SUM(OFFSET(I1,1,1,3,1))
  OFFSET(H1,2,1)
  INDIRECT("J"&3)
  SUM(INDIRECT("J2:J5"))
  ROW(J5)
  COLUMN(J5)
  ROWS(H2:K8)
  COLUMNS(H2:K8)
  ADDRESS(2,3)
  ADDRESS(2,3,4)
  TRANSPOSE(5)
  LEFT(H2,3)
  RIGHT(H2,2)
  MID(H2,2,3)
  LEN(H2)
  UPPER(H4)
  LOWER(H2)
  PROPER("john q. public-smith")
  TRIM("  a   b ")
  CLEAN("a")
  SUBSTITUTE("a-b-c","-","/")
  SUBSTITUTE("a-b-c","-","/",2)
  REPLACE("123-45-6789",1,6,"XXX-XX")
  FIND("a","Banana",3)
  SEARCH("A","Banana")
  SEARCH("n?n","Banana")
  REPT("ab",3)
  CONCATENATE("a",1,TRUE)
  CHAR(65)
  CODE("A")
  VALUE("1,234.5")
  VALUE("(200)")
  VALUE("4/15/2026")
  VALUE("12%")
  TEXT(1234.5,"#,##0.00")
  TEXT(1234.5,"$#,##0")
  TEXT(-1234.5,"#,##0.00;(#,##0.00)")
  TEXT(0.075,"0.0%")
  TEXT(46127,"m/d/yyyy")
  TEXT(46127,"mmmm d, yyyy")
  TEXT(46127,"ddd")
  TEXT(46127.75,"h:mm AM/PM")
  TEXT(5,"000")
  TEXT(1234567,"0.00E+00")
  FIXED(1234.567,1)
  DOLLAR(1234.567)
  TEXTJOIN(", ",TRUE,H2:H5)
  CONCAT(H2:H4)
  EXACT("a","A")
  DATE(2026,4,15)
  DATE(2026,14,1)
  DATE(2026,3,0)
  DATE(2024,2,30)
  YEAR(K2)
  MONTH(K2)
  DAY(K2)
  WEEKDAY(K2)
  WEEKDAY(K2,2)
  WEEKNUM(K2)
  ISOWEEKNUM(K2)
  EDATE(K2,6)
  EDATE(DATE(2026,8,31),6)
  EOMONTH(K2,0)
  EOMONTH(K2,-1)+1
  DATEDIF(K8,K2,"m")
  DATEDIF(K8,K2,"d")
  DATEDIF(K8,K2,"y")
  DATEDIF(DATE(2025,1,31),DATE(2026,3,1),"md")
  DAYS(K3,K2)
  K3-K2
  NETWORKDAYS(K2,K3)
  NETWORKDAYS(K2,K3,K4)
  WORKDAY(K2,10)
  WORKDAY(K2,-5,K4)
  NETWORKDAYS.INTL(K2,K3,7)
  WORKDAY.INTL(K2,10,"0000011")
  YEARFRAC(K8,K2)
  YEARFRAC(K8,K2,1)
  YEARFRAC(K8,K2,3)
  DAYS360(K8,K2)
  DATEVALUE("4/15/2026")
  TIME(6,30,0)
  HOUR(0.75)
  MINUTE(0.7604166667)
  TIMEVALUE("6:00 PM")
  PMT(0.06/12,360,-300000)
  IPMT(0.06/12,1,360,-300000)
  PPMT(0.06/12,1,360,-300000)
  FV(0.05/12,120,-100)
  PV(0.05/12,120,-100)
  NPER(0.05/12,-500,10000)
  RATE(60,-200,10000)
  NPV(0.08,L2:L4)
  IRR({-100,60,60})
  XIRR({-100,60,60},{45000,45200,45500})
  XNPV(0.08,{-100,60,60},{45000,45200,45500})
  EFFECT(0.07,365)
  NOMINAL(0.07,12)
  SLN(10000,1000,5)
  SYD(10000,1000,5,1)
  DDB(10000,1000,5,1)
  DB(10000,1000,5,1)
  VDB(10000,0,5,0,1,2)
  CUMIPMT(0.06/12,360,300000,1,12,0)
  CUMPRINC(0.06/12,360,300000,1,12,0)
  FREQUENCY(J2:J5,1000)
  MMULT({1,2},{3;4})
  SUM({1,2;3,4})
  ROMAN(2026)
  BASE(10,2)
  DECIMAL("FF",16)
  DEC2HEX(255)
  HEX2DEC("FF")
  BIN2DEC("101")
  CONVERT(1,"mi","km")
  ERF(0.5)
  NORMSDIST(1)
  NORM.DIST(1,0,1,TRUE)
  NORMSINV(0.975)
  TDIST(2,10,2)
  FORECAST(5,J2:J5,L2:L5)
  SLOPE(J2:J5,L2:L5)
  INTERCEPT(J2:J5,L2:L5)
  GEOMEAN(L2:L4)
  HARMEAN(L2:L4)
  AVEDEV(J2:J5)
  DEVSQ(J2:J5)
  TRIMMEAN(J2:J6,0.4)
  DSUM(H1:K5,"Paid",M1:M2)
  DCOUNT(H1:K5,"Paid",M1:M2)
  J2:J5 I3:K3
  SUM(J2:INDEX(J2:J8,3))
  COUNT(H2:K4 I1:I9)
  AGGREGATE(9,6,I2:I8)
  J2:J8*2
  IF(J2:J8>100,1,0)
  CELL("address",J3)
  ERROR.TYPE(1/0)
  HYPERLINK("http://example.com","link")
  UNICHAR(8364)
  UNICODE("€")
  NUMBERVALUE("1.234,5",",",".")
  ARABIC("MMXXVI")
  SUMXMY2(L2:L3,L3:L4)
  SUMX2MY2(L2:L3,L3:L4)
  SUMX2PY2(L2:L3,L3:L4)
  MULTINOMIAL(2,3)
  SERIESSUM(2,0,1,{1,1})
  BITAND(6,3)
  RATE(360,-1798.65,300000)
  PERCENTRANK(J2:J6,900)
  COUPNUM(K8,K3,2)
  PRICE(K8,K3,0.05,0.06,100,2)
  ACCRINT(K8,K2,K3,0.05,1000,2)
`);
