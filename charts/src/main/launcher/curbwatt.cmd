@echo off
rem Starts the program that lies beside this file. The archive of its classes, made by the build, halves the start. Only G1
rem takes the archive's objects too; what computes for long takes the serial collector and the optimising compiler.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "how=-XX:+UseG1GC -XX:TieredStopAtLevel=1"
for %%c in (settings size idle odds compare recharge days page) do if "%~1"=="%%c" set "how=-XX:+UseSerialGC"
"%java%" "-XX:SharedArchiveFile=%~dp0curbwatt.jsa" -Xshare:auto %how% -jar "%~dp0curbwatt.jar" %*
