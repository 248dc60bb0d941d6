@echo off
rem Opens the workbench. 23 and 24 are its way to ask for another start.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
for %%j in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set "LAUNCHER=%%j"
:again
"%JAVA%" -Xms128m -Xmx1g -Dosgi.requiredJavaVersion=17 -Dlog4j.defaultInitOverride=true -jar "%LAUNCHER%" -install "%~dp0." %*
if %ERRORLEVEL%==23 goto again
if %ERRORLEVEL%==24 goto again
exit /b %ERRORLEVEL%
