@echo off
rem The command line: cantonment-desk --help
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Dlog4j.defaultInitOverride=true -Dcantonment.home="%~dp0." -cp "%~dp0plugins\*" org.cantonment.desk.cli.Main %*
exit /b %ERRORLEVEL%
