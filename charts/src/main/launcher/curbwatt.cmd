@echo off
rem Starts the program that lies beside this file. The archive of its classes, made by the build, halves the start.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "compiler=-XX:TieredStopAtLevel=1"
for %%c in (settings size idle odds compare recharge days page) do if "%~1"=="%%c" set "compiler="
"%java%" "-XX:SharedArchiveFile=%~dp0curbwatt.jsa" -Xshare:auto -XX:+UseSerialGC %compiler% -jar "%~dp0curbwatt.jar" %*
